import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';

/**
 * Leads somebody without a pointer into the sheet as it opens, and with Escape out of it, back to the button that opened
 * it. A finger moves no focus: on Pace that stays on the surface, for a pedal.
 */
export function useKeyboardWay(
  sheet: RefObject<HTMLElement | null>,
  mayLeave: boolean,
  close: () => void,
): void {
  useEffect(() => {
    if (document.activeElement?.matches('.shell-tablet:focus-visible')) {
      sheet.current?.querySelector('button')?.focus();
    }
  }, [sheet]);

  useEffect(() => {
    const { current } = sheet;
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || !mayLeave) return;
      // The screen beneath has an Escape of its own.
      event.stopPropagation();
      close();
      document.querySelector<HTMLElement>('.shell-tablet')?.focus();
    };
    current?.addEventListener('keydown', onKeyDown);
    return () => current?.removeEventListener('keydown', onKeyDown);
  }, [sheet, mayLeave, close]);
}

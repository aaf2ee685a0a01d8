import { useEffect, useRef } from 'preact/hooks';
import type { Stamp } from '../../domain/records/stamp';
import { useApp } from '../app';

/** Keys that no button took: Enter and Space go to the surface, so that a pedal is never lost; Escape goes back. */
export function useStrayKeys(tapMain: (at: Stamp) => void, goBack: () => void): void {
  const { bench, isReadOnly } = useApp();
  const latest = useRef({ tapMain, goBack });
  latest.current = { tapMain, goBack };
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key === 'Escape') latest.current.goBack();
      const isTap = event.key === 'Enter' || event.key === ' ';
      if (!isTap || event.target !== document.body || isReadOnly) return;
      event.preventDefault();
      if (!event.repeat) latest.current.tapMain(bench.clock.stampOf(event));
    };
    document.addEventListener('keydown', onKeyDown);
    return () => document.removeEventListener('keydown', onKeyDown);
  }, [bench, isReadOnly]);
}

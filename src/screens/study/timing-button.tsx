import type {
  ComponentChildren,
  TargetedKeyboardEvent,
  TargetedMouseEvent,
  TargetedPointerEvent,
} from 'preact';
import type { Stamp } from '../../domain/records/stamp';
import { useApp } from '../app';

interface Props {
  readonly class: string;
  readonly children: ComponentChildren;
  readonly onTap: (at: Stamp) => void;
  readonly disabled?: boolean;
  readonly label?: string;
  readonly pressed?: boolean;
}

/**
 * A button that acts at the press, stamped with the moment of the event itself: a click would come only
 * when the finger leaves, and later still on a busy page.
 *
 * Must act once a press: on the primary pointer, on Enter or Space held down, and on a click that no press
 * came before, as assistive programs send it.
 */
export function TimingButton({ class: name, children, onTap, disabled, label, pressed }: Props) {
  const { clock } = useApp().bench;

  const press = (event: TargetedPointerEvent<HTMLButtonElement>) => {
    if (event.isPrimary && event.button === 0) onTap(clock.stampOf(event));
  };
  const key = (event: TargetedKeyboardEvent<HTMLButtonElement>) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    if (!event.repeat) onTap(clock.stampOf(event));
  };
  // Some browsers click on the release of Space, whatever became of the press.
  const keyUp = (event: TargetedKeyboardEvent<HTMLButtonElement>) => {
    if (event.key === ' ') event.preventDefault();
  };
  const click = (event: TargetedMouseEvent<HTMLButtonElement>) => {
    if (event.detail === 0) onTap(clock.stampOf(event));
  };

  return (
    <button
      type="button"
      class={name}
      disabled={disabled}
      aria-label={label}
      aria-pressed={pressed}
      onPointerDown={press}
      onKeyDown={key}
      onKeyUp={keyUp}
      onClick={click}
    >
      {children}
    </button>
  );
}

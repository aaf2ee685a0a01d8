import type { ComponentChildren, RefObject } from 'preact';
import { useRef } from 'preact/hooks';
import type { Stamp } from '../domain/records/stamp';
import { useApp } from './app';

interface Props {
  onTap(at: Stamp): void;
  readonly class: string;
  readonly disabled?: boolean;
  readonly label?: string;
  readonly pressed?: boolean;
  readonly buttonRef?: RefObject<HTMLButtonElement | null>;
  readonly children: ComponentChildren;
}

/** A click this soon after a press or a key is its echo. */
const ECHO_MS = 1_000;

/**
 * A button whose tap is a moment in time. It acts when it is pressed, not when it is let go, and takes the
 * moment from the event itself. Enter and Space press it too, once however long they are held. A click
 * that no press came before is an assistive tool's, and counts as well.
 */
export function TimingButton(props: Props) {
  const { onTap, disabled = false, label, pressed, buttonRef, children, class: className } = props;
  const { clock } = useApp().bench;
  const actedAt = useRef(Number.NEGATIVE_INFINITY);
  const act = (event: Event) => {
    // A browser may send the press of a button that is switched off.
    if (disabled) return;
    actedAt.current = event.timeStamp;
    onTap(clock.stampOf(event));
  };
  return (
    <button
      type="button"
      class={className}
      disabled={disabled}
      aria-label={label}
      aria-pressed={pressed}
      ref={buttonRef ?? null}
      onPointerDown={(event) => {
        if (event.isPrimary && event.button === 0) act(event);
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        if (!event.repeat) act(event);
      }}
      onKeyUp={(event) => {
        if (event.key === ' ') event.preventDefault();
      }}
      onClick={(event) => {
        if (event.detail === 0 && event.timeStamp - actedAt.current > ECHO_MS) act(event);
      }}
    >
      {children}
    </button>
  );
}

import type { Stamp } from '../../domain/records/stamp';
import { clockFace } from '../../i18n/format-duration';
import { useNow } from '../use-now';

interface Props {
  /** Milliseconds at a moment. */
  read(now: Stamp): number;
  readonly class: string;
  readonly label: string;
}

/** A running time. A timer is not announced with every second; it can be read whenever it is wanted. */
export function TickingClock({ read, class: className, label }: Props) {
  const shown = clockFace(read(useNow().value));
  // 59:59 in full size, 1:02:05 and 12:00:00 each a step smaller.
  const size = shown.length > 7 ? ' is-longest' : shown.length > 5 ? ' is-long' : '';
  return (
    <p class={`number ${className}${size}`} role="timer" aria-label={label}>
      {shown}
    </p>
  );
}

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
  return (
    <p class={`number ${className}${shown.length > 5 ? ' is-long' : ''}`} role="timer" aria-label={label}>
      {shown}
    </p>
  );
}

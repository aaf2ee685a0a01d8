import { elapsedMs } from '../records/elapsed-ms';
import type { Stamp } from '../records/stamp';
import type { Turn } from './turn';

/** Milliseconds from the beginning of a turn to this moment; one that ended lasts no longer. */
export function turnNow(turn: Turn, now: Stamp): number {
  return turn.status === 'ended' ? turn.lastAtMs : turn.lastAtMs + elapsedMs(turn.lastStamp, now);
}

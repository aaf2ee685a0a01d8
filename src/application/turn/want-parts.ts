import type { Bench } from '../bench';

/** More than a station makes in a turn is a slip of the finger. */
export const MOST_WANTED = 2_000;

/**
 * So many good parts are wanted in the turn in hand; null takes it back.
 *
 * @throws {RangeError} wantParts requires a whole number of parts from 1 to 2000, or none
 */
export function wantParts(bench: Bench, parts: number | null): void {
  if (parts !== null && !(Number.isInteger(parts) && parts >= 1 && parts <= MOST_WANTED)) {
    throw new RangeError('wantParts requires a whole number of parts from 1 to 2000, or none');
  }
  const turn = bench.turn.value;
  if (turn && turn.status !== 'ended' && turn.wantedParts !== parts) {
    bench.record(turn.id, [{ kind: 'parts-wanted', parts }]);
  }
}

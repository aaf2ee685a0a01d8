import type { Bench } from '../bench';

/**
 * Says how much of a stoppage cost no output, because the machine or the operator worked on meanwhile.
 *
 * @throws {RangeError} absorbStoppage requires a time that is not negative
 */
export function absorbStoppage(
  bench: Bench,
  { turn, stoppage, absorbedMs, by }: { turn: string; stoppage: string; absorbedMs: number; by: string },
): void {
  if (!(absorbedMs >= 0 && Number.isFinite(absorbedMs))) {
    throw new RangeError('absorbStoppage requires a time that is not negative');
  }
  bench.record(turn, [{ kind: 'stoppage-absorbed', stoppage, absorbedMs, by: by.trim() }]);
}

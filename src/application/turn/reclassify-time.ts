import type { CorrectionFact } from '../../domain/records/turn-fact';
import type { Bench } from '../bench';

/**
 * Puts a stretch of a turn under another category. Times in milliseconds since the turn began.
 *
 * @throws {RangeError} reclassifyTime requires a stretch that begins in the turn and ends after it begins
 */
export function reclassifyTime(
  bench: Bench,
  stream: string,
  {
    fromMs,
    toMs,
    category,
    reason,
    label,
    by,
    why,
  }: Omit<Extract<CorrectionFact, { kind: 'time-reclassified' }>, 'kind' | 'isAtStation'>,
): void {
  if (!(fromMs >= 0 && toMs > fromMs)) {
    throw new RangeError(
      'reclassifyTime requires a stretch that begins in the turn and ends after it begins',
    );
  }
  bench.record(stream, [{ kind: 'time-reclassified', fromMs, toMs, category, reason, label, by, why }]);
}

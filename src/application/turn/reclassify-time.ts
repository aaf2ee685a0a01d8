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
  stretch: Omit<Extract<CorrectionFact, { kind: 'time-reclassified' }>, 'kind'>,
): void {
  if (!(stretch.fromMs >= 0 && stretch.toMs > stretch.fromMs)) {
    throw new RangeError(
      'reclassifyTime requires a stretch that begins in the turn and ends after it begins',
    );
  }
  bench.record(stream, [{ kind: 'time-reclassified', ...stretch }]);
}

import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/** More than this is no learning. */
export const MOST_LEARNING_PARTS = 10_000;

/**
 * The next parts of a person are made while learning: counted, in no mean, and without a position. 0 ends it.
 *
 * @throws {RangeError} setLearning requires a whole number of parts up to 10,000
 */
export function setLearning(bench: Bench, code: string, parts: number): void {
  if (!Number.isInteger(parts) || parts < 0 || parts > MOST_LEARNING_PARTS) {
    throw new RangeError('setLearning requires a whole number of parts up to 10,000');
  }
  bench.record(SHOP_STREAM, [{ kind: 'learning-set', code, parts }]);
}

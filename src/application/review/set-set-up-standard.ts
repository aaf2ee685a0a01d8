import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/**
 * Sets what a set-up earns from now on; null takes it away. What is past keeps what stood then.
 *
 * @throws {RangeError} setSetUpStandard requires a time above zero
 */
export function setSetUpStandard(bench: Bench, standardMs: number | null): void {
  if (standardMs !== null && !(standardMs > 0 && Number.isFinite(standardMs))) {
    throw new RangeError('setSetUpStandard requires a time above zero');
  }
  bench.record(SHOP_STREAM, [{ kind: 'set-up-standard-set', standardMs }]);
}

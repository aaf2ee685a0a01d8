import { SHOP_STREAM } from '../../domain/records/log-record';
import type { StopReason } from '../../domain/records/shop-fact';
import type { Bench } from '../bench';

/** More than six make the operator search. */
export const MOST_REASONS = 6;

/**
 * Sets the reasons the shop offers when work stands still.
 *
 * @throws {RangeError} setReasons requires one to six reasons
 */
export function setReasons(bench: Bench, reasons: readonly StopReason[]): void {
  if (reasons.length === 0 || reasons.length > MOST_REASONS) {
    throw new RangeError('setReasons requires one to six reasons');
  }
  bench.record(SHOP_STREAM, [{ kind: 'reasons-set', reasons }]);
}

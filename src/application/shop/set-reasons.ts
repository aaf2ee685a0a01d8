import { SHOP_STREAM } from '../../domain/records/log-record';
import type { StopReason } from '../../domain/records/shop-fact';
import { firstReasons } from '../../domain/shop/shop';
import { NOT_STATED } from '../../domain/turn/turn';
import type { Bench } from '../bench';

/** More than six make the operator search. */
export const MOST_REASONS = 6;

/**
 * Sets the reasons the shop offers when work stands still. A reason the tablet words itself may have an
 * empty label; any other needs one.
 *
 * @throws {RangeError} setReasons requires one to six reasons
 * @throws {RangeError} setReasons requires an id of its own for every reason
 * @throws {RangeError} setReasons requires words for every reason
 */
export function setReasons(bench: Bench, reasons: readonly StopReason[]): void {
  if (reasons.length === 0 || reasons.length > MOST_REASONS) {
    throw new RangeError('setReasons requires one to six reasons');
  }
  const ids = reasons.map(({ id }) => id);
  if (ids.includes('') || ids.includes(NOT_STATED) || new Set(ids).size < ids.length) {
    throw new RangeError('setReasons requires an id of its own for every reason');
  }
  const isWorded = ({ id, label }: StopReason) =>
    label.trim() !== '' || firstReasons.some((first) => first.id === id);
  if (!reasons.every(isWorded)) throw new RangeError('setReasons requires words for every reason');
  const trimmed = reasons.map((reason) => ({ ...reason, label: reason.label.trim() }));
  bench.record(SHOP_STREAM, [{ kind: 'reasons-set', reasons: trimmed }]);
}

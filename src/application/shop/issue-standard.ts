import { SHOP_STREAM } from '../../domain/records/log-record';
import type { IssuedStandard } from '../../domain/records/standard-fact';
import type { Bench } from '../bench';

const DAY = /^\d{4}-\d\d-\d\d$/;

/**
 * Issues a standard of a part: a further revision, which never changes.
 *
 * @throws {RangeError} issueStandard requires a part of the shop
 * @throws {RangeError} issueStandard requires a standard time of at least one study
 * @throws {RangeError} issueStandard requires a day from which it holds, before the day of its check
 * @throws {RangeError} issueStandard requires whoever issues it
 */
export function issueStandard(bench: Bench, part: string, standard: IssuedStandard): void {
  const { standardTimeMs, studies, inForceOn, checkBy, issuedBy } = standard;
  if (!bench.shop.value.parts.some(({ id }) => id === part)) {
    throw new RangeError('issueStandard requires a part of the shop');
  }
  if (!(standardTimeMs > 0) || studies.length === 0) {
    throw new RangeError('issueStandard requires a standard time of at least one study');
  }
  if (!DAY.test(inForceOn) || !DAY.test(checkBy) || checkBy <= inForceOn) {
    throw new RangeError('issueStandard requires a day from which it holds, before the day of its check');
  }
  if (issuedBy.trim() === '') throw new RangeError('issueStandard requires whoever issues it');
  bench.record(SHOP_STREAM, [{ kind: 'standard-issued', part, ...standard }]);
}

import { SHOP_STREAM } from '../../domain/records/log-record';
import type { ComparisonTerms } from '../../domain/records/review-fact';
import type { Bench } from '../bench';
import { writtenText } from './written-text';

/**
 * Fixes what is to be compared, and the difference that matters, before anybody looks: a threshold that is chosen
 * afterwards proves nothing.
 *
 * @throws {RangeError} fixComparison requires a name for what was changed
 * @throws {RangeError} fixComparison requires two periods that do not overlap, the earlier one first
 * @throws {RangeError} fixComparison requires a threshold above 0 and below 100 percent
 */
export function fixComparison(bench: Bench, { by, ...terms }: ComparisonTerms & { by: string }): void {
  const title = writtenText('fixComparison', 'a name for what was changed', terms.title);
  const { beforeFrom, beforeTo, afterFrom, afterTo, thresholdPct } = terms;
  const areInOrder = beforeFrom <= beforeTo && beforeTo < afterFrom && afterFrom <= afterTo;
  if (!areInOrder) {
    throw new RangeError('fixComparison requires two periods that do not overlap, the earlier one first');
  }
  if (!(thresholdPct > 0 && thresholdPct < 100)) {
    throw new RangeError('fixComparison requires a threshold above 0 and below 100 percent');
  }
  bench.record(SHOP_STREAM, [{ kind: 'comparison-fixed', ...terms, title, by: by.trim() }]);
}

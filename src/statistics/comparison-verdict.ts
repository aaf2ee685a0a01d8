import { requireReadings } from './require-readings';

export type ComparisonVerdict =
  | 'improved'
  | 'improved-size-uncertain'
  | 'not-shown'
  | 'no-difference-that-matters'
  | 'worse-size-uncertain'
  | 'worse';

/**
 * Comparison verdict: what an interval of a before-and-after difference says against a threshold that
 * was fixed before looking. A key, not a sentence; the words belong to the screen.
 *
 * Formula, in this order, for after − before when lower is better (mirrored when higher is better):
 *   equivalence interval wholly inside ±threshold  → no-difference-that-matters
 *   interval wholly beyond −threshold              → improved (by at least what matters)
 *   interval wholly below 0                        → improved-size-uncertain
 *   interval wholly beyond +threshold              → worse
 *   interval wholly above 0                        → worse-size-uncertain
 *   else                                           → not-shown
 *   interval              of the difference, 95 % as a rule, any unit
 *   equivalence interval  of the same difference at 90 % (two one-sided tests); the same interval if absent
 *   threshold             the difference that matters, same unit
 * Source: two one-sided tests after Schuirmann 1987; the wording of the keys is this project's.
 *
 * @throws {RangeError} comparisonVerdict requires finite limits with the lower not above the upper
 * @throws {RangeError} comparisonVerdict requires a threshold above zero
 * @example
 * comparisonVerdict({ lower: -0.98, upper: -0.74 }, { threshold: 0.15 }) // => 'improved'
 */
export function comparisonVerdict(
  interval: { readonly lower: number; readonly upper: number },
  options: {
    readonly threshold: number;
    readonly equivalence?: { readonly lower: number; readonly upper: number };
    readonly better?: 'lower' | 'higher';
  },
): ComparisonVerdict {
  const { threshold, equivalence = interval, better = 'lower' } = options;
  for (const { lower, upper } of [interval, equivalence]) {
    requireReadings('comparisonVerdict', [lower, upper], 2);
    if (lower > upper) {
      throw new RangeError('comparisonVerdict requires finite limits with the lower not above the upper');
    }
  }
  if (!(threshold > 0 && threshold < Number.POSITIVE_INFINITY)) {
    throw new RangeError('comparisonVerdict requires a threshold above zero');
  }
  if (equivalence.lower > -threshold && equivalence.upper < threshold) return 'no-difference-that-matters';
  const [best, worst] =
    better === 'lower' ? [interval.lower, interval.upper] : [-interval.upper, -interval.lower];
  if (worst <= -threshold) return 'improved';
  if (worst < 0) return 'improved-size-uncertain';
  if (best >= threshold) return 'worse';
  if (best > 0) return 'worse-size-uncertain';
  return 'not-shown';
}

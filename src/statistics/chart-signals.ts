import { requireReadings } from './require-readings';

/** Each rule with the place it comes from. */
const rules = {
  /** One value outside the limits. W. A. Shewhart 1931; Western Electric handbook 1956, test 1. */
  'beyond-limits': { window: 1, needed: 1, zone: 3 },
  /** Two of three beyond two thirds of the way to one limit. Western Electric handbook 1956, test 2. */
  'two-of-three-beyond-two-thirds': { window: 3, needed: 2, zone: 2 },
  /** Four of five beyond one third of the way to one limit. Western Electric handbook 1956, test 3. */
  'four-of-five-beyond-one-third': { window: 5, needed: 4, zone: 1 },
  /** Eight in a row on one side of the centre. Western Electric handbook 1956, test 4 (Nelson 1984: nine). */
  'eight-on-one-side': { window: 8, needed: 8, zone: 0 },
} as const;

export type ChartRule = keyof typeof rules;

export type ChartSignal = {
  readonly rule: ChartRule;
  readonly side: 'high' | 'low';
  /** Position, counted from 0, of the value that completes the pattern. */
  readonly index: number;
};

/**
 * Chart signals: which values say that something other than ordinary variation is at work.
 *
 * Formula: with z = 3·(x − centre)/(upper − centre) above the centre and 3·(x − centre)/(centre − lower)
 * below it, a rule fires at a value when enough of the last few lie beyond its z on one side.
 * Two rules by default, 'beyond-limits' and 'eight-on-one-side': with all four, a stable process is
 * called unstable about once in 92 values instead of once in 150 or so (Champ and Woodall 1987).
 * Source: Western Electric, Statistical Quality Control Handbook, 1956, pp. 25–28; L. S. Nelson, Journal
 * of Quality Technology 16, 1984; C. W. Champ and W. H. Woodall, Technometrics 29, 1987 (from memory).
 *
 * @throws {RangeError} chartSignals requires at least one reading
 * @throws {RangeError} chartSignals requires finite readings no larger than 1e150 in size
 * @throws {RangeError} chartSignals requires limits in the order lower, centre, upper
 * @example
 * chartSignals([5, 6, 11], { lower: 0, centre: 5, upper: 10 })[0].index // => 2
 */
export function chartSignals(
  values: readonly number[],
  limits: { readonly lower: number; readonly centre: number; readonly upper: number },
  chosen: readonly ChartRule[] = ['beyond-limits', 'eight-on-one-side'],
): ChartSignal[] {
  const { lower, centre, upper } = limits;
  requireReadings('chartSignals', values, 1);
  requireReadings('chartSignals', [lower, centre, upper], 3);
  if (!(lower <= centre && centre <= upper)) {
    throw new RangeError('chartSignals requires limits in the order lower, centre, upper');
  }
  const isBeyond = (value: number, side: 'high' | 'low', zone: number) =>
    side === 'high'
      ? value > centre + (zone / 3) * (upper - centre)
      : value < centre - (zone / 3) * (centre - lower);
  const signals: ChartSignal[] = [];
  for (let index = 0; index < values.length; index += 1) {
    for (const rule of chosen) {
      const { window, needed, zone } = rules[rule];
      const last = values.slice(Math.max(0, index - window + 1), index + 1);
      for (const side of ['high', 'low'] as const) {
        const beyond = last.filter((value) => isBeyond(value, side, zone)).length;
        // The newest value must take part, or an old pattern would be signalled again.
        if (beyond >= needed && isBeyond(values[index]!, side, zone)) signals.push({ rule, side, index });
      }
    }
  }
  return signals;
}

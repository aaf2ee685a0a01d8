import { dayFigures } from './day-figures';
import type { DaySummary } from './summarise-day';

export type BridgeStep =
  | 'other-work'
  | 'scrap'
  | 'rework'
  | 'stoppage'
  | 'called-away'
  | 'set-up'
  | 'planned-break'
  | 'unaccounted';

/** From the mean net cycle to attended time per good part. Milliseconds a good part. */
export interface GoodPartBridge {
  readonly netMs: number;
  readonly steps: readonly { readonly step: BridgeStep; readonly ms: number }[];
  readonly perGoodMs: number;
}

/**
 * The bridge from net cycle to attended time per good part: what each step adds. It adds up exactly.
 *
 * Formula, with N parts done, G of them good at last, T the attended time by category:
 *   net cycle      mean of the parts that count
 *   other work     T(cycle)/N − net cycle: work on parts that are in no mean, and between parts
 *   scrap          T(cycle)/G − T(cycle)/N: the time of what was thrown away
 *   each other     T(category)/G
 *   sum            Σ T / G = attended ÷ good
 * Times in milliseconds. Null for a day without a good part, or without one in the mean.
 */
export function goodPartBridge(day: DaySummary): GoodPartBridge | null {
  const { netMs, perGoodMs } = dayFigures(day);
  const { done, good, totals } = day;
  if (netMs === null || perGoodMs === null) return null;
  const timed = [
    'rework',
    'stoppage',
    'called-away',
    'set-up',
    'planned-break',
    'unaccounted',
  ] as const satisfies readonly BridgeStep[];
  return {
    netMs,
    steps: [
      { step: 'other-work', ms: totals.cycle / done - netMs },
      { step: 'scrap', ms: totals.cycle / good - totals.cycle / done },
      ...timed.map((step) => ({ step, ms: totals[step] / good })),
    ],
    perGoodMs,
  };
}

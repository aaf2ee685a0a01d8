import { type QuotedTime, quoteTime } from './quote-time';

/** How many parts an attended time brings. */
export interface PartsWithin {
  readonly parts: number;
  /** 95 % of such orders bring between these; null below five days. */
  readonly low: number | null;
  readonly high: number | null;
}

/** Nobody makes more of one order. */
const MOST_PARTS = 10_000_000;

/**
 * The parts that can be made in an attended time: the question of `quoteTime` from its other end.
 *
 * Formula: the largest Q with time(Q) ≤ attended, where time(Q) is the total of `quoteTime`; its slow end gives the
 * low number, its fast end the high one. So Q parts are quoted for the day they were asked for, and Q + 1 for a later.
 */
export function partsWithin(
  order: Omit<Parameters<typeof quoteTime>[0], 'quantity'>,
  efficiencies: readonly number[],
  dayMs: number,
  attendedMs: number,
): PartsWithin {
  const most = (which: 'totalMs' | 'lowMs' | 'highMs') =>
    largest((quantity) => fits(quoteTime({ ...order, quantity }, efficiencies, dayMs)[which], attendedMs));
  const isRange = quoteTime({ ...order, quantity: 1 }, efficiencies, dayMs).lowMs !== null;
  return {
    parts: most('totalMs'),
    low: isRange ? most('highMs') : null,
    high: isRange ? most('lowMs') : null,
  };
}

/** Less than a millisecond over is rounding, as it is for the day on which an order is done. */
function fits(neededMs: QuotedTime['highMs'], attendedMs: number): boolean {
  return neededMs !== null && neededMs < attendedMs + 1;
}

/** The largest whole number that holds, where every smaller one does. */
function largest(holds: (quantity: number) => boolean): number {
  let [under, over] = [0, 1];
  while (over < MOST_PARTS && holds(over)) [under, over] = [over, 2 * over];
  while (over - under > 1) {
    const middle = Math.floor((under + over) / 2);
    if (holds(middle)) under = middle;
    else over = middle;
  }
  return under;
}

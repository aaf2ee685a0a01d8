/** What is ordered of one part. */
export interface OrderedPart {
  readonly quantity: number;
  /** Standard time a part, milliseconds. */
  readonly standardMs: number;
}

/**
 * People needed for an order in a period, before rounding: the load says how near the next person is.
 *
 * Formula: people = Σ quantity·ST ÷ (attended × efficiency)
 *   ST          standard time a part, milliseconds
 *   attended    milliseconds that one person attends in the period
 *   efficiency  earned ÷ attended that is expected, 1 for 100 %
 *
 * @throws {RangeError} peopleNeeded requires an attended time and an efficiency above zero
 * @example
 * peopleNeeded([{ quantity: 500, standardMs: 60_000 }], 25_000_000, 0.8) // => 1.5
 */
export function peopleNeeded(
  ordered: readonly OrderedPart[],
  attendedMs: number,
  efficiency: number,
): number {
  const isPossible = attendedMs > 0 && efficiency > 0 && Number.isFinite(attendedMs * efficiency);
  if (!isPossible) {
    throw new RangeError('peopleNeeded requires an attended time and an efficiency above zero');
  }
  const loadMs = ordered.reduce((sum, { quantity, standardMs }) => sum + quantity * standardMs, 0);
  return loadMs / (attendedMs * efficiency);
}

/** The difference of two figures as they are shown: taken from the exact ones it can differ in its last digit. */
export function shownDifference(now: number, then: number, digits: number): number {
  return Number(then.toFixed(digits)) - Number(now.toFixed(digits));
}

/** Decimals of a lead time in minutes: of a short one, or of a difference in it, a tenth would tell nothing. */
export const leadDigits = (leadMs: number) => (leadMs < 600_000 ? 3 : 1);

/** The difference of two figures as they are shown: taken from the exact ones it can differ in its last digit. */
export function shownDifference(now: number, then: number, digits: number): number {
  return Number(then.toFixed(digits)) - Number(now.toFixed(digits));
}

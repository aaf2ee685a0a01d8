/**
 * A time that is never negative and has a long right tail, as hand work has.
 *
 * Formula: mean · exp(s·z − s²/2) with s² = ln(1 + cv²)
 *   mean  arithmetic mean of the times, in any unit; the result has the same
 *   cv    their coefficient of variation, 0.12 means 12 %
 *   z     standard normal deviate
 */
export function lognormalTime(z: number, { mean, cv }: SpreadTime): number {
  const variance = Math.log(1 + cv * cv);
  return mean * Math.exp(Math.sqrt(variance) * z - variance / 2);
}

/** Mean and coefficient of variation of a time. */
export interface SpreadTime {
  readonly mean: number;
  readonly cv: number;
}

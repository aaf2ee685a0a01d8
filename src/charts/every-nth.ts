/**
 * How many labels in a row share one that is written, so that none touches the next: 1 when all fit.
 *
 * @throws {RangeError} everyNth requires a step above 0
 * @example
 * everyNth(20, 30) // => 2
 */
export function everyNth(stepPx: number, labelPx: number): number {
  if (!(stepPx > 0)) throw new RangeError('everyNth requires a step above 0');
  return Math.max(1, Math.ceil(labelPx / stepPx));
}

/**
 * How many decimals the ticks of an axis need so that no two of them read alike: those of the step between them.
 *
 * @throws {RangeError} tickDecimals requires at least two ticks
 * @example
 * tickDecimals([1, 1.25, 1.5]) // => 2
 */
export function tickDecimals(ticks: readonly number[]): number {
  if (ticks.length < 2) throw new RangeError('tickDecimals requires at least two ticks');
  const step = ticks[1]! - ticks[0]!;
  let decimals = 0;
  while (decimals < 6 && Math.abs(step - Number(step.toFixed(decimals))) > step * 1e-6) decimals += 1;
  return decimals;
}

/**
 * Rounds amounts so that they still add up to their rounded sum (largest remainder): a printed column that does
 * not add up is not believed.
 *
 * Source: the method of largest remainders, as used to share out seats (Hamilton, 1792).
 *
 * @throws {RangeError} roundedShares requires amounts of 0 or more
 * @example
 * roundedShares([1.4, 1.4, 1.4], 0) // => [2, 1, 1]
 */
export function roundedShares(amounts: readonly number[], digits: number): number[] {
  if (!amounts.every((amount) => amount >= 0 && Number.isFinite(amount))) {
    throw new RangeError('roundedShares requires amounts of 0 or more');
  }
  const unit = 10 ** -digits;
  const scaled = amounts.map((amount) => amount / unit);
  const whole = scaled.map(Math.floor);
  const sum = Math.round(scaled.reduce((total, amount) => total + amount, 0));
  let left = sum - whole.reduce((total, amount) => total + amount, 0);
  const byRemainder = scaled
    .map((amount, place) => ({ place, remainder: amount - whole[place]! }))
    .sort((a, b) => b.remainder - a.remainder || a.place - b.place);
  for (const { place } of byRemainder) {
    if (left <= 0) break;
    whole[place]! += 1;
    left -= 1;
  }
  return whole.map((amount) => Number((amount * unit).toFixed(digits)));
}

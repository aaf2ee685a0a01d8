/**
 * Amounts that are added one after the other, rounded where they stand in the sum, so that what is printed adds up to
 * what is printed. They may be negative.
 *
 * @example
 * roundedSteps([140, -40, 140], 100) // => [100, 0, 100]
 */
export function roundedSteps(amounts: readonly number[], unit: number): number[] {
  let sum = 0;
  let before = 0;
  return amounts.map((amount) => {
    sum += amount;
    const rounded = Math.round(sum / unit) * unit;
    const step = rounded - before;
    before = rounded;
    return step;
  });
}

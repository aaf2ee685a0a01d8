/** Steps that a person counts in, within one power of ten. */
const roundSteps = [1, 2, 2.5, 5, 10];

/**
 * Round values from low to high, both inside the first and the last of them, so that an axis reads like a
 * ruler: at most so many, one more at most where the ends need it. Of whole things the step is whole too: bars that are
 * 2.5 wide would hold two and three of them in turn.
 *
 * @throws {RangeError} roundTicks requires a low value below the high one
 * @throws {RangeError} roundTicks requires at least two ticks
 * @example
 * roundTicks(0, 1.9, 5) // => [0, 0.5, 1, 1.5, 2]
 * @example
 * roundTicks(238, 254, 8, true) // => [235, 240, 245, 250, 255]
 */
export function roundTicks(low: number, high: number, most: number, isWhole = false): number[] {
  if (!(low < high && Number.isFinite(high - low))) {
    throw new RangeError('roundTicks requires a low value below the high one');
  }
  if (!(most >= 2)) throw new RangeError('roundTicks requires at least two ticks');
  const wanted = (high - low) / (most - 1);
  const power = 10 ** Math.floor(Math.log10(wanted));
  const steps = roundSteps.map((round) => round * power);
  const step = steps.find(
    (round) => round >= wanted * (1 - 1e-9) && (!isWhole || (round >= 1 && Number.isInteger(round))),
  )!;
  const first = Math.floor(low / step + 1e-9);
  const last = Math.ceil(high / step - 1e-9);
  // Multiplied, not added up: 0.1 added three times is not 0.3.
  return Array.from({ length: last - first + 1 }, (_, place) =>
    Number(((first + place) * step).toPrecision(12)),
  );
}

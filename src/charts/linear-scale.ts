/** Turns a value into a place on the drawing, in pixels. */
export type Scale = (value: number) => number;

/**
 * A straight scale: equal steps of the value are equal steps on the drawing.
 *
 * Formula: place = start + (value − low) / (high − low) · (end − start)
 *   low, high   values at the two ends, any one unit; start, end  their places, pixels
 *
 * @throws {RangeError} linearScale requires a low value below the high one
 * @example
 * linearScale({ low: 0, high: 2, start: 100, end: 500 })(0.5) // => 200
 */
export function linearScale({
  low,
  high,
  start,
  end,
}: {
  low: number;
  high: number;
  start: number;
  end: number;
}): Scale {
  if (!(low < high)) throw new RangeError('linearScale requires a low value below the high one');
  return (value) => start + ((value - low) / (high - low)) * (end - start);
}

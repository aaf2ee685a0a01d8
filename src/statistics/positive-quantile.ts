import type { Tails } from './beta-tails';

/** A tail asked for: both parts given, so that the smaller keeps its digits. */
export interface TailsAsked {
  readonly lower: number;
  readonly upper: number;
}

/** Newton's error after a step is about the square of the step, so the step after one this small is exact. */
const SMALL_STEP = 1e-10;
const MOST_STEPS = 200;

/**
 * Quantile of a positive quantity: the u at which a lower tail, given as a function of u, has the asked size.
 *
 * Method: Newton's steps on ln(tail) against u, on whichever tail asked is smaller, kept inside a bracket that
 *   every evaluation narrows. u is the logarithm of the quantity (or of its odds); against it the logarithm of
 *   either tail is concave for the chi-square, F and Student families, so the steps settle in a handful.
 *   u, tails  pure numbers
 *
 * Callers check their input.
 *
 * @example
 * Math.exp(positiveQuantile((u) => gammaTails(1, Math.exp(u)), { lower: 0.5, upper: 0.5 }, 0)) // => 0.6931471805599453
 */
export function positiveQuantile(tailsAt: (u: number) => Tails, asked: TailsAsked, start: number): number {
  const useLower = asked.lower <= asked.upper;
  const target = Math.log(useLower ? asked.lower : asked.upper);
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  let u = start;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const { lower, upper, slope } = tailsAt(u);
    const tail = useLower ? lower : upper;
    const tooFar = useLower ? tail > asked.lower : tail < asked.upper;
    if (tooFar) high = u;
    else low = u;
    const move = ((Math.log(tail) - target) * tail) / slope;
    const newton = useLower ? u - move : u + move;
    if (Math.abs(move) <= SMALL_STEP * Math.max(1, Math.abs(u))) return newton;
    u = newton > low && newton < high ? newton : between(low, high, u);
  }
  return u;
}

/** Half-way inside a closed bracket; a widening stride from u while a side is still open. */
function between(low: number, high: number, u: number): number {
  if (Number.isFinite(low) && Number.isFinite(high)) return (low + high) / 2;
  const stride = 1 + Math.abs(u);
  return Number.isFinite(low) ? u + stride : u - stride;
}

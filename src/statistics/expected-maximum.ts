import { normalDensity } from './normal-density';
import { normalProbability } from './normal-probability';
import { requireNumber } from './require-number';

/** A time that varies beside one that does not. All in one unit. */
export interface VaryingBesideFixed {
  readonly mean: number;
  readonly deviation: number;
  /** The time that does not vary: a machine's. */
  readonly fixed: number;
}

/**
 * Expected maximum of a normal time and a fixed one: how long both take on average when each waits for the other.
 *
 * Formula: E[max] = m + (μ − m)·Φ(d) + σ·φ(d), d = (μ − m)/σ
 *   μ, σ  mean and deviation of the time that varies; m  the fixed time; all in one unit, and so is the answer
 *   It is never below the larger of μ and m, and furthest above it at a tie: σ·φ(0) = 0.399·σ.
 * Source: C. E. Clark, "The greatest of a finite set of random variables", Operations Research 9 (1961),
 *   pp. 145–162, with one of two deviations zero (from memory); the integral is elementary.
 *
 * @throws {RangeError} expectedMaximum requires finite times and a deviation of 0 or more
 * @example
 * expectedMaximum({ mean: 1, deviation: 0, fixed: 2 }) // => 2
 */
export function expectedMaximum({ mean, deviation, fixed }: VaryingBesideFixed): number {
  for (const value of [mean, deviation, fixed]) {
    requireNumber('expectedMaximum', 'finite times and a deviation of 0 or more', value, deviation >= 0);
  }
  if (deviation === 0) return Math.max(mean, fixed);
  const d = (mean - fixed) / deviation;
  return fixed + (mean - fixed) * normalProbability(d) + deviation * normalDensity(d);
}

import { poissonInterval } from './poisson-interval';
import { requireConfidence } from './require-confidence';
import { requireNumber } from './require-number';

/** Below this many occurrences the interval is too wide to plan by, and a record or the method should be asked. */
const FEW = 5;

/** How often an occasional element occurs for each work unit, with its interval. */
export interface OccasionalFrequency {
  readonly perUnit: number;
  readonly lower: number;
  readonly upper: number;
  /** True below five occurrences: ask for a production record, or a frequency that the method states. */
  readonly tooFewSeen: boolean;
}

/**
 * Occasional frequency: occurrences of an element for each work unit, as observed.
 *
 * Formula: f = x/N, with the exact Poisson interval χ²(α/2; 2x)/2N to χ²(1 − α/2; 2x + 2)/2N
 *   x  occurrences seen and N  work units they were seen in, counts; f per work unit; confidence a share.
 *   The element's time for each work unit is its normal time for each occurrence times f.
 * Source: Garwood, Biometrika 28 (1936), for the interval; Stevenson, Operations Management, 14th edition, p. 332,
 *   problem 4, for averaging over occurrences only.
 *
 * @throws {RangeError} occasionalFrequency requires a whole number of occurrences from 0 to 1e9
 * @throws {RangeError} occasionalFrequency requires at least one work unit
 * @throws {RangeError} occasionalFrequency requires a confidence above 0 and below 1
 * @example
 * occasionalFrequency(1, 30, 0.95).upper.toFixed(3) // => '0.186'
 */
export function occasionalFrequency(
  occurrences: number,
  workUnits: number,
  confidence: number,
): OccasionalFrequency {
  const name = 'occasionalFrequency';
  requireNumber(
    name,
    'a whole number of occurrences from 0 to 1e9',
    occurrences,
    Number.isInteger(occurrences) && occurrences >= 0 && occurrences <= 1e9,
  );
  requireNumber(name, 'at least one work unit', workUnits, workUnits >= 1 && workUnits <= 1e15);
  requireConfidence(name, confidence);
  const { rate, lower, upper } = poissonInterval(occurrences, workUnits, confidence);
  return { perUnit: rate, lower, upper, tooFewSeen: occurrences < FEW };
}

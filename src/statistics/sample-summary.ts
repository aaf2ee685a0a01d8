import { observedMean } from './observed-mean';
import { requireReadings } from './require-readings';
import { sampleStandardDeviation } from './sample-standard-deviation';

/** A sample by its three figures, all that a comparison of means needs and all that a book often prints. */
export type SampleSummary = {
  readonly count: number;
  readonly mean: number;
  /** Sample deviation (n − 1), in the unit of the mean. */
  readonly deviation: number;
};

/**
 * Sample summary: count, mean and sample deviation of readings, or of a summary given as such, checked.
 *
 * Formula: mean = Σx/n, deviation = √(Σ(x − mean)²/(n − 1))
 *   x  readings, any one unit
 * Source: any text; the deviation divides by n − 1.
 *
 * @throws {RangeError} "<name> requires at least two readings", and finite ones
 * @throws {RangeError} "<name> requires a whole count of at least 2 and a deviation of zero or more"
 * @example
 * sampleSummary('welchComparison', [1, 2, 3]).deviation // => 1
 */
export function sampleSummary(name: string, sample: readonly number[] | SampleSummary): SampleSummary {
  if (isReadings(sample)) {
    requireReadings(name, sample, 2);
    return {
      count: sample.length,
      mean: observedMean(sample),
      deviation: sampleStandardDeviation(sample),
    };
  }
  const { count, mean, deviation } = sample;
  requireReadings(name, [count, mean, deviation], 3);
  if (!Number.isInteger(count) || count < 2 || deviation < 0) {
    throw new RangeError(`${name} requires a whole count of at least 2 and a deviation of zero or more`);
  }
  return sample;
}

function isReadings(sample: readonly number[] | SampleSummary): sample is readonly number[] {
  return Array.isArray(sample);
}

/** What a required-readings formula is asked: the pilot's mean and spread, and the precision wanted of the mean. */
export interface PrecisionAsked {
  /** Mean of the pilot readings, any one unit. */
  readonly mean: number;
  /** Sample standard deviation (n − 1) of the pilot readings, in the unit of the mean. */
  readonly standardDeviation: number;
  /** Wanted half-width as a share of the mean: 0.05 for ±5 %. */
  readonly precision: number;
  /** Wanted confidence, two-sided, as a share: 0.95 for 95 %. */
  readonly confidence: number;
}

/**
 * Running statistics: what is kept of the readings so far, so that a figure after a tap costs the same at the ten
 * thousandth reading as at the tenth. Never changed in place: add-reading.ts and remove-reading.ts return a new one.
 */
export interface RunningStatistics {
  /** Readings so far, a count. */
  readonly n: number;
  /** Their mean, in the unit of the readings; 0 before the first. */
  readonly mean: number;
  /** Sum of squared deviations from the mean, in the unit squared. */
  readonly squares: number;
}

/** Running statistics before the first reading. */
export const runningStatistics: RunningStatistics = { n: 0, mean: 0, squares: 0 };

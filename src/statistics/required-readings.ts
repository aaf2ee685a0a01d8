/** A required number of readings: as the formula gives it, and as a count that can be taken (whole-readings.ts). */
export interface RequiredReadings {
  readonly raw: number;
  readonly readings: number;
}

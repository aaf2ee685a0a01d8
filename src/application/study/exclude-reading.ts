import type { Bench } from '../bench';

/**
 * Leaves a reading out of every mean, for a cause a person names. The reading stays on the sheet.
 *
 * @throws {RangeError} excludeReading requires a cause
 */
export function excludeReading(bench: Bench, study: string, reading: string, cause: string): void {
  if (cause.trim() === '') throw new RangeError('excludeReading requires a cause');
  bench.record(study, [{ kind: 'reading-excluded', reading, cause: cause.trim() }]);
}

import type { Reading, Study } from './study';

/** @throws {RangeError} "functionName requires a reading of the study" */
export function readingOf(functionName: string, study: Study, id: string): Reading {
  const reading = study.readings.find((one) => one.id === id);
  if (!reading) throw new RangeError(`${functionName} requires a reading of the study`);
  return reading;
}

import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

/**
 * An occasional element begins inside the element in hand, and is timed apart.
 *
 * @throws {RangeError} beginOccasional requires an occasional element of the method
 */
export function beginOccasional(bench: Bench, at: Stamp, elementNo: number): void {
  const study = bench.study.value;
  if (study?.status !== 'open' || study.watch.aside || study.watch.isHeld) return;
  if (study.heading?.elements[elementNo - 1]?.elementClass !== 'occasional') {
    throw new RangeError('beginOccasional requires an occasional element of the method');
  }
  bench.record(study.id, [{ kind: 'occasional-began', elementNo }], at);
}

import type { Stamp } from '../../domain/records/stamp';
import type { StudyHeading } from '../../domain/records/study-fact';
import { cycleOrder } from '../../domain/study/study';
import type { Bench } from '../bench';

/**
 * Begins a study; its running watch starts at this moment.
 *
 * @throws {RangeError} startStudy requires a method with at least one repetitive element
 * @throws {RangeError} startStudy requires that the person was told
 */
export function startStudy(bench: Bench, heading: StudyHeading, at?: Stamp): void {
  if (cycleOrder(heading.elements).length === 0) {
    throw new RangeError('startStudy requires a method with at least one repetitive element');
  }
  if (!heading.personTold) throw new RangeError('startStudy requires that the person was told');
  bench.begin({ kind: 'study-started', starts: 'study', ...heading }, at);
}

import type { Stamp } from '../../domain/records/stamp';
import type { StudyHeading } from '../../domain/records/study-fact';
import { foldStudy } from '../../domain/study/fold-study';
import { requireTerms } from '../../domain/study/require-terms';
import { cycleOrder } from '../../domain/study/study';
import type { Bench } from '../bench';

/**
 * Begins a study and gives its id; its running watch starts at this moment.
 *
 * @throws {RangeError} startStudy requires that no other study is open
 * @throws {RangeError} startStudy requires a method with at least one repetitive element
 * @throws {RangeError} startStudy requires that the person was told
 * @throws {RangeError} startStudy requires allowances from 0 to below 100 %
 */
export function startStudy(bench: Bench, heading: StudyHeading, at?: Stamp): string {
  // A second one would leave the first open for ever, with nobody at its watch.
  if (bench.study.value?.status === 'open') {
    throw new RangeError('startStudy requires that no other study is open');
  }
  if (cycleOrder(heading.elements).length === 0) {
    throw new RangeError('startStudy requires a method with at least one repetitive element');
  }
  if (!heading.personTold) throw new RangeError('startStudy requires that the person was told');
  requireTerms('startStudy', heading.terms);
  bench.bringStudies(foldStudy);
  return bench.begin({ kind: 'study-started', starts: 'study', ...heading }, at).stream;
}

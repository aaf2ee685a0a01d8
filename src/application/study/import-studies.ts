import { groupBy } from '../../domain/group-by';
import type { Fact } from '../../domain/records/log-record';
import type { ElementDefinition } from '../../domain/shop/element-definition';
import type { StudyRow } from '../../domain/study/study-row';
import type { Bench } from '../bench';

/**
 * Puts the studies of a table that was read and checked whole, or typed from paper, into the log; gives their ids.
 *
 * @param elements the method that a sheet was typed for
 * @param filledIn its rows, from 1, whose rating was not typed
 */
export function importStudies(
  bench: Bench,
  fileName: string,
  rows: readonly StudyRow[],
  elements?: readonly ElementDefinition[],
  filledIn?: readonly number[],
): string[] {
  const studies = groupBy(rows, ({ study }) => study);
  const facts = [...studies].map(
    ([study, own]): Fact => ({
      kind: 'study-imported',
      starts: 'study',
      study,
      fileName,
      rows: own,
      ...(elements ? { elements } : {}),
      ...(filledIn ? { filledIn } : {}),
    }),
  );
  // At once: of a table that is there in part, the rest could only come in with that part a second time.
  return bench.record(null, facts).map(({ stream }) => stream);
}

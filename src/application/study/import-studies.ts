import { groupBy } from '../../domain/group-by';
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
  return [...studies].map(([study, own]) => {
    const record = bench.begin({
      kind: 'study-imported',
      starts: 'study',
      study,
      fileName,
      rows: own,
      ...(elements ? { elements } : {}),
      ...(filledIn ? { filledIn } : {}),
    });
    return record.stream;
  });
}

import { groupBy } from '../../domain/group-by';
import type { StudyRow } from '../../domain/study/study-row';
import type { Bench } from '../bench';

/** Puts the studies of a table that was read and checked whole into the log; gives their ids. */
export function importStudies(bench: Bench, fileName: string, rows: readonly StudyRow[]): string[] {
  const studies = groupBy(rows, ({ study }) => study);
  return [...studies].map(([study, own]) => {
    const record = bench.begin({ kind: 'study-imported', starts: 'study', study, fileName, rows: own });
    return record.stream;
  });
}

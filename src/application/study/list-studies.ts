import { recordKey } from '../../domain/records/record-key';
import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

export interface StudyInList {
  readonly id: string;
  readonly title: string;
  readonly partCode: string;
  readonly operator: string;
  readonly startedAt: Stamp;
  readonly imported: boolean;
}

/** The newest studies, newest first. */
export async function listStudies(bench: Bench, count = 50): Promise<StudyInList[]> {
  const starts = await bench.log.readLatestStarts('study', count);
  return starts.flatMap((record): StudyInList[] => {
    const { fact } = record;
    const about = { id: recordKey(record), startedAt: record.stamp };
    if (fact.kind === 'study-started') {
      return [
        { ...about, title: fact.title, partCode: fact.partCode, operator: fact.operator, imported: false },
      ];
    }
    if (fact.kind === 'study-imported') {
      const { part = '', operator = '' } = fact.rows[0]?.carried ?? {};
      return [{ ...about, title: fact.study, partCode: part, operator, imported: true }];
    }
    return [];
  });
}

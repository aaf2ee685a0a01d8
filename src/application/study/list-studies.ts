import { recordKey } from '../../domain/records/record-key';
import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

export interface StudyInList {
  readonly id: string;
  readonly title: string;
  readonly partCode: string;
  readonly operator: string;
  readonly startedAt: Stamp;
  /** Timed here, or how it came to the tablet. */
  readonly source: 'timed' | 'table' | 'paper';
  /** What a table or a sheet says of its begin: a day, or a moment as 2026-03-02T07:00; empty where timed here. */
  readonly toldStart: string;
}

/** The newest studies, newest first. */
export async function listStudies(bench: Bench, count = 50): Promise<StudyInList[]> {
  const starts = await bench.log.readLatestStarts('study', count);
  return starts.flatMap((record): StudyInList[] => {
    const { fact } = record;
    const about = { id: recordKey(record), startedAt: record.stamp };
    if (fact.kind === 'study-started') {
      return [
        {
          ...about,
          title: fact.title,
          partCode: fact.partCode,
          operator: fact.operator,
          source: 'timed',
          toldStart: '',
        },
      ];
    }
    if (fact.kind === 'study-imported') {
      const { part = '', operator = '', started_at = '' } = fact.rows[0]?.carried ?? {};
      const source = fact.elements ? 'paper' : 'table';
      return [{ ...about, title: fact.study, partCode: part, operator, source, toldStart: started_at }];
    }
    return [];
  });
}

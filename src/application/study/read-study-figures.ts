import { foldStudy } from '../../domain/study/fold-study';
import { studyClock } from '../../domain/study/study-clock';
import { cycleTimes } from '../../domain/study/study-progress';
import { studyStability } from '../../domain/study/study-stability';
import { summariseStudy } from '../../domain/study/summarise-study';
import { unseenElements } from '../../domain/study/unseen-elements';
import type { Bench } from '../bench';

/** What a list tells of a study that has to be read for it. */
export interface StudyFigures {
  readonly cycles: number;
  /** Those with every element used. */
  readonly wholeCycles: number;
  /** What speaks against making a standard of it. */
  readonly obstacle: 'clock' | 'trend' | null;
  /** Null while an element of the method has no usable reading. */
  readonly standardTimeMs: number | null;
  readonly isOpen: boolean;
}

/** Reads one study of the log for the list; null when the log has none of that name. */
export async function readStudyFigures(bench: Bench, id: string): Promise<StudyFigures | null> {
  const records = await bench.log.readStream(id);
  if (records.length === 0) return null;
  const study = foldStudy(records);
  const rows = study.readings.map(({ row }) => row);
  const isWhole = rows.length > 0 && unseenElements(study).length === 0;
  const isTrend = () => rows.length > 0 && studyStability(rows).trend !== null;
  return {
    wholeCycles: cycleTimes(rows).length,
    obstacle: studyClock(study)?.usable === false ? 'clock' : isTrend() ? 'trend' : null,
    cycles: rows.reduce((most, { cycle }) => Math.max(most, cycle), 0),
    standardTimeMs: isWhole ? summariseStudy(rows).standardTimeMs : null,
    isOpen: study.status === 'open',
  };
}

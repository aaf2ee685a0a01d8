import { localDay } from '../../domain/day/local-day';
import { isSameCode } from '../../domain/shop/known-code';
import type { Part } from '../../domain/shop/shop';
import type { StudyInAnalysis } from '../../domain/study/analyse-studies';
import { foldStudy } from '../../domain/study/fold-study';
import type { Study } from '../../domain/study/study';
import { studyClock } from '../../domain/study/study-clock';
import { studyStability } from '../../domain/study/study-stability';
import { unseenElements } from '../../domain/study/unseen-elements';
import type { Bench } from '../bench';
import { listStudies } from './list-studies';

/** A study of a part, and what speaks against making a standard of it. */
export interface StudyOfPart extends StudyInAnalysis {
  readonly study: Study;
  /** Null where a table does not say. */
  readonly methodRevision: number | null;
  readonly obstacles: readonly ('clock' | 'trend' | 'unseen')[];
}

/** How many of the newest studies are looked through. */
const MOST = 200;

/** The studies of one part that have ended, newest first, with those from tables. */
export async function readStudiesOfPart(bench: Bench, { id, code }: Part): Promise<StudyOfPart[]> {
  const found: StudyOfPart[] = [];
  for (const listed of await listStudies(bench, MOST)) {
    if (!isSameCode(listed.partCode, code)) continue;
    const study = foldStudy(await bench.log.readStream(listed.id));
    const isOther = study.heading !== null && study.heading.part !== id;
    if (isOther || study.status === 'open' || study.readings.length === 0) continue;
    found.push(studyOfPart(study));
  }
  return found;
}

function studyOfPart(study: Study): StudyOfPart {
  const rows = study.readings.map(({ row }) => row);
  const { carried } = rows[0]!;
  const obstacles: StudyOfPart['obstacles'][number][] = [];
  if (studyClock(study)?.usable === false) obstacles.push('clock');
  if (studyStability(rows).trend !== null) obstacles.push('trend');
  if (unseenElements(study).length > 0) obstacles.push('unseen');
  const isSeen = (elementNo: number) => study.frequencies.get(elementNo) === 'observed';
  return {
    study,
    id: study.id,
    title: study.title,
    operator: carried.operator ?? '',
    day: study.heading ? localDay(study.startedAt) : (carried.started_at ?? '').slice(0, 10),
    rows,
    seen: [...new Set(rows.filter(({ elementNo }) => isSeen(elementNo)).map(({ element }) => element))],
    methodRevision: study.heading?.methodRevision ?? (parseInt(carried.method_revision ?? '', 10) || null),
    obstacles,
  };
}

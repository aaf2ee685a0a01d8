import { type CellWork, readCellWork } from '../../domain/cell/cell-work';
import { ENOUGH_CYCLES } from '../../domain/cell/cycle-precision';
import type { Stamp } from '../../domain/records/stamp';
import { flagReadings } from '../../domain/study/flag-readings';
import { foldStudy } from '../../domain/study/fold-study';
import type { Bench } from '../bench';
import { listStudies } from '../study/list-studies';

/** The study that the cell is reckoned from on one part. */
export interface StudySource {
  /** Id and title of the study. */
  readonly study: string;
  readonly title: string;
  readonly startedAt: Stamp;
  /** Studies of the part that are kept, this one among them. */
  readonly of: number;
  /** Readings that its sheet marks as worth a look: they count until somebody leaves them out. */
  readonly flagged: number;
}

/** The work of the cell on one part, from its newest study that tells all of it. */
export interface CellStudy extends StudySource {
  readonly partCode: string;
  readonly work: CellWork;
}

/** A newest study that is not used. */
export interface UnusedStudy {
  readonly title: string;
  /** Elements that no usable reading tells about. */
  readonly missing: readonly string[];
  /** Where it has too few whole cycles beside an older study that has enough: how many. */
  readonly cycles?: number;
}

export interface CellStudies {
  /** In the order of the shop's parts. */
  readonly studies: readonly CellStudy[];
  readonly partial: readonly UnusedStudy[];
}

/**
 * The newest whole study of each part in use with cycles enough to stand on; where none has enough, the newest whole
 * one. One that is being timed, here or on another tablet, is not whole, and is left alone; so is a part that the
 * shop has retired.
 */
export async function readCellStudies(bench: Bench): Promise<CellStudies> {
  const shop = bench.shop.value.parts;
  const isRetired = (wanted: string) => {
    const own = shop.filter(({ code }) => code === wanted);
    return own.length > 0 && own.every(({ retired }) => retired);
  };
  const found = new Map<string, CellStudy>();
  const partial: UnusedStudy[] = [];
  const isEnough = (own: CellStudy | undefined) => !!own && own.work.complete.length >= ENOUGH_CYCLES;
  const listed = await listStudies(bench);
  for (const { id, title, partCode, startedAt } of listed) {
    const newer = found.get(partCode);
    if (isEnough(newer) || isRetired(partCode)) continue;
    const study = foldStudy(await bench.log.readStream(id));
    if (study.status === 'open') continue;
    const read = readCellWork(study.readings.map(({ row }) => row));
    if (!read.ok) {
      if (!newer) partial.push({ title, missing: read.missing });
      continue;
    }
    const of = listed.filter((own) => own.partCode === partCode).length;
    const flagged = flagReadings(study.readings).length;
    const own = { partCode, study: id, title, startedAt, of, flagged, work: read.work };
    if (newer && !isEnough(own)) continue;
    if (newer) partial.push({ title: newer.title, missing: [], cycles: newer.work.complete.length });
    found.set(partCode, own);
  }
  // In the order in which the shop lists its parts; a study of a part that it does not make comes last.
  const codes = shop.map(({ code }) => code);
  const place = ({ partCode }: CellStudy) =>
    codes.includes(partCode) ? codes.indexOf(partCode) : codes.length;
  const studies = [...found.values()].sort((a, b) => place(a) - place(b));
  return { studies, partial };
}

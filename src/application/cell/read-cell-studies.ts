import { type CellWork, readCellWork } from '../../domain/cell/cell-work';
import { ENOUGH_CYCLES } from '../../domain/cell/cycle-precision';
import { groupBy } from '../../domain/group-by';
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
  /** Studies of the part that are finished, this one among them. */
  readonly of: number;
  /** Why this one: it is the newest; the newest that tells enough; where none does, the one that tells most. */
  readonly why: 'newest' | 'enough' | 'most';
  /** Readings that its sheet marks as worth a look: they count until somebody leaves them out. */
  readonly flagged: number;
}

/** The work of the cell on one part, from one of its studies. */
export interface CellStudy extends StudySource {
  readonly partCode: string;
  readonly work: CellWork;
}

/** A newest study that is not used. */
export interface UnusedStudy {
  readonly title: string;
  /** Elements that no usable reading tells about. */
  readonly missing: readonly string[];
  /** Where an older study has more whole cycles than this one, which has too few: how many. */
  readonly cycles?: number;
}

export interface CellStudies {
  /** In the order of the shop's parts. */
  readonly studies: readonly CellStudy[];
  readonly partial: readonly UnusedStudy[];
}

/**
 * The newest study of each part in use that tells every element of its method, with whole cycles enough to stand on;
 * where none has enough, the one with most of them. One that is being timed, here or on another tablet, is not whole, and is left alone; so is a part that the
 * shop has retired.
 */
export async function readCellStudies(bench: Bench): Promise<CellStudies> {
  const shop = bench.shop.value.parts;
  const isRetired = (wanted: string) => {
    const own = shop.filter(({ code }) => code === wanted);
    return own.length > 0 && own.every(({ retired }) => retired);
  };
  const listed = await listStudies(bench);
  const found: CellStudy[] = [];
  const partial: UnusedStudy[] = [];
  for (const [partCode, ofPart] of groupBy(listed, (own) => own.partCode)) {
    if (isRetired(partCode)) continue;
    const told: CellStudy[] = [];
    let newer = 0;
    let open = 0;
    for (const { id, title, startedAt } of ofPart) {
      const study = foldStudy(await bench.log.readStream(id));
      if (study.status === 'open') {
        open += 1;
        continue;
      }
      const read = readCellWork(
        study.readings.map(({ row }) => row),
        study.method,
      );
      if (!read.ok) {
        if (told.length === 0) partial.push({ title, missing: read.missing });
        newer += 1;
        continue;
      }
      const flagged = flagReadings(study.readings).length;
      const why = newer === 0 ? 'newest' : 'enough';
      told.push({
        partCode,
        study: id,
        title,
        startedAt,
        of: ofPart.length - open,
        why,
        flagged,
        work: read.work,
      });
      newer += 1;
      if (wholeCycles(told.at(-1)!) >= ENOUGH_CYCLES) break;
    }
    // Newest first: of as many whole cycles the newer one stays.
    const chosen = told.reduce<CellStudy | null>(
      (best, own) => (best && wholeCycles(best) >= wholeCycles(own) ? best : own),
      null,
    );
    if (!chosen) continue;
    for (const own of told.slice(0, told.indexOf(chosen))) {
      partial.push({ title: own.title, missing: [], cycles: wholeCycles(own) });
    }
    const isThin = wholeCycles(chosen) < ENOUGH_CYCLES;
    found.push(isThin && chosen.why === 'enough' ? { ...chosen, why: 'most' } : chosen);
  }
  // In the order in which the shop lists its parts; a study of a part that it does not make comes last.
  const codes = shop.map(({ code }) => code);
  const place = ({ partCode }: CellStudy) =>
    codes.includes(partCode) ? codes.indexOf(partCode) : codes.length;
  const studies = found.sort((a, b) => place(a) - place(b));
  return { studies, partial };
}

const wholeCycles = ({ work }: CellStudy) => work.complete.length;

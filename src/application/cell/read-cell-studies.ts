import { type CellWork, readCellWork } from '../../domain/cell/cell-work';
import { foldStudy } from '../../domain/study/fold-study';
import type { Bench } from '../bench';
import { listStudies } from '../study/list-studies';

/** The work of the cell on one part, from its newest study that tells all of it. */
export interface CellStudy {
  readonly partCode: string;
  /** Id and title of the study. */
  readonly study: string;
  readonly title: string;
  readonly work: CellWork;
}

export interface CellStudies {
  /** In the order of the shop's parts. */
  readonly studies: readonly CellStudy[];
  /** Newest studies that tell only half of a method, with what is missing. */
  readonly partial: readonly { readonly title: string; readonly missing: readonly string[] }[];
}

/**
 * The newest whole study of each part in use. One that is being timed, here or on another tablet, is not whole, and is
 * left alone; so is a part that the shop has retired.
 */
export async function readCellStudies(bench: Bench): Promise<CellStudies> {
  const shop = bench.shop.value.parts;
  const isRetired = (wanted: string) => {
    const own = shop.filter(({ code }) => code === wanted);
    return own.length > 0 && own.every(({ retired }) => retired);
  };
  const found = new Map<string, CellStudy>();
  const partial: CellStudies['partial'][number][] = [];
  for (const { id, title, partCode } of await listStudies(bench)) {
    if (found.has(partCode) || isRetired(partCode)) continue;
    const study = foldStudy(await bench.log.readStream(id));
    if (study.status === 'open') continue;
    const read = readCellWork(study.readings.map(({ row }) => row));
    if (read.ok) found.set(partCode, { partCode, study: id, title, work: read.work });
    else partial.push({ title, missing: read.missing });
  }
  // In the order in which the shop lists its parts; a study of a part that it does not make comes last.
  const codes = shop.map(({ code }) => code);
  const place = ({ partCode }: CellStudy) =>
    codes.includes(partCode) ? codes.indexOf(partCode) : codes.length;
  const studies = [...found.values()].sort((a, b) => place(a) - place(b));
  return { studies, partial };
}

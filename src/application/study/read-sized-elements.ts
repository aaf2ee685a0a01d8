import { foldStudy } from '../../domain/study/fold-study';
import { fitStandardData, type SizedElement, sizedElements } from '../../domain/study/standard-data';
import type { StudyRow } from '../../domain/study/study-row';
import type { Bench } from '../bench';
import { listStudies } from './list-studies';

/** How many of the newest studies are looked through. */
const MOST = 200;

/** Elements that were read on parts of several sizes, over all finished studies. */
export async function readSizedElements(bench: Bench): Promise<SizedElement[]> {
  const rows: StudyRow[] = [];
  for (const { id } of await listStudies(bench, MOST)) {
    const study = foldStudy(await bench.log.readStream(id));
    if (study.status !== 'open') rows.push(...study.readings.map(({ row }) => row));
  }
  // What grows most plainly comes first: most elements do not grow with most sizes.
  const grows = ({ readings }: SizedElement) => fitStandardData(readings)?.regression.rSquared ?? 0;
  return sizedElements(rows)
    .map((sized) => ({ sized, rSquared: grows(sized) }))
    .sort((a, b) => b.rSquared - a.rSquared)
    .map(({ sized }) => sized);
}

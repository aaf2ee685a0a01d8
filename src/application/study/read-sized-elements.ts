import { foldStudy } from '../../domain/study/fold-study';
import { fitStandardData, type SizedElement, sizedElements } from '../../domain/study/standard-data';
import type { Study } from '../../domain/study/study';
import type { Bench } from '../bench';
import { listStudies } from './list-studies';

/** How many of the newest studies are looked through. */
const MOST = 200;

export interface SizedElementsFound {
  readonly elements: readonly SizedElement[];
  /** The finished studies that they come from, newest first. */
  readonly studies: readonly Study[];
}

/** Elements that were read on parts of several sizes, over all finished studies. */
export async function readSizedElements(bench: Bench): Promise<SizedElementsFound> {
  const studies: Study[] = [];
  for (const { id } of await listStudies(bench, MOST)) {
    const study = foldStudy(await bench.log.readStream(id));
    if (study.status !== 'open') studies.push(study);
  }
  // What grows most plainly comes first: most elements do not grow with most sizes.
  const grows = ({ readings }: SizedElement) => fitStandardData(readings)?.regression.rSquared ?? 0;
  const elements = sizedElements(studies.flatMap(({ readings }) => readings.map(({ row }) => row)))
    .map((sized) => ({ sized, rSquared: grows(sized) }))
    .sort((a, b) => b.rSquared - a.rSquared)
    .map(({ sized }) => sized);
  return { elements, studies };
}

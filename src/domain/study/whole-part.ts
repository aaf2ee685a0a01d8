import { groupBy } from '../group-by';
import {
  fitStandardData,
  type SizedElement,
  type StandardData,
  sizedElements,
  timeForSize,
} from './standard-data';
import type { Study } from './study';
import type { StudyRow } from './study-row';
import { type StudySummary, summariseStudy } from './summarise-study';
import { unseenElements } from './unseen-elements';

/** One element of a part of any size. */
interface ElementOfWhole {
  /** A row of it, for all that is no time. */
  readonly row: StudyRow;
  readonly meanMs: number;
  /** Null where no growth is shown: then its mean holds for every size. */
  readonly grows: { readonly driver: string; readonly data: StandardData } | null;
}

/** The method in which a sized element was timed. */
export interface WholePart {
  readonly elements: readonly ElementOfWhole[];
  /** Elements of it of which no reading is used. */
  readonly missing: readonly string[];
}

/**
 * The other elements of the newest study that timed this one, by name over all studies of the same repetitive elements:
 * each by the size that it shows to grow with most plainly, else by its mean.
 *
 * @param studies newest first; what is sized was read in one of them
 */
export function wholePart(
  studies: readonly Pick<Study, 'method' | 'readings'>[],
  sized: SizedElement,
): WholePart {
  const newest = studies.find((study) => repetitiveOf(study).includes(sized.element))!;
  const names = repetitiveOf(newest).join('\n');
  const alike = studies.filter((study) => repetitiveOf(study).join('\n') === names);
  const rows = alike
    .flatMap(({ readings }) => readings.map(({ row }) => row))
    .filter(({ elementClass }) => elementClass !== 'foreign');
  const others = sizedElements(rows);
  const { elements } = summariseStudy(rows);
  const seen = elements.map(({ element }) => element);
  return {
    elements: elements.flatMap(({ element, normalMeanMs }) => {
      if (normalMeanMs === null) return [];
      const own = element === sized.element ? [sized] : others.filter((other) => other.element === element);
      const row = rows.find((one) => one.element === element)!;
      return [{ row, meanMs: normalMeanMs, grows: plainest(own, element === sized.element) }];
    }),
    missing: [
      ...elements.flatMap(({ element, normalMeanMs }) => (normalMeanMs === null ? [element] : [])),
      ...unseenElements(newest).filter((element) => !seen.includes(element)),
    ],
  };
}

/** What the time of a part of these sizes is made of; elements whose size lies far outside those read are named. */
export function timeOfWhole(
  { elements }: WholePart,
  sizes: ReadonlyMap<string, number>,
): { readonly summary: StudySummary; readonly outside: readonly string[] } {
  const outside: string[] = [];
  const rows = elements.map(({ row, meanMs, grows }) => {
    const told = grows && timeForSize(grows.data, sizes.get(grows.driver) ?? Number.NaN);
    if (told && (told.range.standing === 'outside' || told.value <= 0)) outside.push(row.element);
    return { ...row, observedMs: Math.max(0, told?.value ?? meanMs), ratingPct: 100, excluded: null };
  });
  return { summary: summariseStudy(rows), outside };
}

function repetitiveOf({ readings }: Pick<Study, 'readings'>): string[] {
  const own = readings.filter(({ row }) => row.elementClass === 'repetitive');
  return [...groupBy(own, ({ row }) => row.element).keys()].sort();
}

function plainest(own: readonly SizedElement[], isAsked: boolean): ElementOfWhole['grows'] {
  const fitted = own.flatMap(({ driver, readings }) => {
    const data = fitStandardData(readings);
    const grows = data && Math.abs(data.regression.slope) > data.regression.slopeHalfWidth;
    return data && (isAsked || grows) ? [{ driver, data }] : [];
  });
  return fitted.sort((a, b) => b.data.regression.rSquared - a.data.regression.rSquared)[0] ?? null;
}

import { observedMean } from '../../statistics/observed-mean';
import { groupBy } from '../group-by';
import type { ElementDefinition, WorkKind } from '../shop/element-definition';
import type { StudyRow } from '../study/study-row';

/** Whose time an element is: the operator's while the machine stands or runs, the machine's, another person's. */
export type CellPlace = 'external' | 'internal' | 'machine' | 'other';

/** What comes with every part. Times are normal times, milliseconds a part. */
export interface CellElement {
  readonly name: string;
  readonly work: WorkKind;
  readonly place: CellPlace;
  /** One for each timed cycle; where a reading is missing or left out, the mean of the others stands in. */
  readonly timesMs: readonly number[];
  readonly meanMs: number;
}

/** What comes once in so many parts. */
export interface OccasionalWork {
  readonly name: string;
  readonly place: 'external' | 'internal';
  readonly everyParts: number;
  readonly timesMs: readonly number[];
  readonly meanMs: number;
}

/** The work of a cell on one part, as a study timed it. */
export interface CellWork {
  /** In the order of the method. */
  readonly elements: readonly CellElement[];
  readonly occasionals: readonly OccasionalWork[];
  /** Places among the timed cycles at which every element was read. */
  readonly complete: readonly number[];
}

export type CellWorkRead =
  | { readonly ok: true; readonly work: CellWork }
  /** Elements of the job that no usable reading tells about; none where the whole cycle is shorter than a second. */
  | { readonly ok: false; readonly missing: readonly string[] };

/** Nothing that a hand makes takes less. */
const SHORTEST_CYCLE_MS = 1_000;

/**
 * The cell's work from the rows of a study: observed × rating/100 ÷ parts per cycle, cycle by cycle, so that what
 * went slowly together stays together. An element of every cycle that the method has and no row tells is missing.
 */
export function readCellWork(
  rows: readonly StudyRow[],
  method: readonly Pick<ElementDefinition, 'name' | 'elementClass'>[] = [],
): CellWorkRead {
  const job = rows.filter(({ elementClass }) => elementClass !== 'foreign');
  const groups = [...groupBy(job, ({ element }) => element).values()].sort(
    (a, b) => a[0]!.elementNo - b[0]!.elementNo,
  );
  const untold = method.filter(
    ({ name, elementClass }) =>
      elementClass === 'repetitive' && !groups.some((own) => own[0]!.element === name),
  );
  const missing = [
    ...groups.filter((own) => !own.some(isUsed)).map((own) => own[0]!.element),
    ...untold.map(({ name }) => name),
  ];
  const repetitive = groups.filter((own) => own[0]!.elementClass === 'repetitive');
  if (missing.length > 0 || repetitive.length === 0) return { ok: false, missing };

  const cycles = [...new Set(repetitive.flatMap((own) => own.map(({ cycle }) => cycle)))].sort(
    (a, b) => a - b,
  );
  const seen = repetitive.map((own) => timesByCycle(own));
  const elements = repetitive.map((own, place): CellElement => {
    const times = seen[place]!;
    const meanMs = observedMean([...times.values()]);
    const { element: name, work, placement } = own[0]!;
    const timesMs = cycles.map((cycle) => times.get(cycle) ?? meanMs);
    return { name, work, place: work === 'machine' ? 'machine' : placement, timesMs, meanMs };
  });
  const totalMs = elements.reduce((sum, { meanMs }) => sum + meanMs, 0);
  if (totalMs < SHORTEST_CYCLE_MS) return { ok: false, missing };
  const complete = cycles.flatMap((cycle, place) => (seen.every((times) => times.has(cycle)) ? [place] : []));
  const occasionals = groups.filter((own) => own[0]!.elementClass === 'occasional').map(occasionalOf);
  return { ok: true, work: { elements, occasionals, complete } };
}

const isUsed = ({ excluded, observedMs }: StudyRow) => excluded === null && observedMs !== null;

const normalMs = ({ observedMs, ratingPct, partsPerCycle }: StudyRow) =>
  (observedMs! * ratingPct) / 100 / partsPerCycle;

/** An element read twice in one cycle, as a table may have it, took both times. */
function timesByCycle(rows: readonly StudyRow[]): Map<number, number> {
  const times = new Map<number, number>();
  for (const row of rows.filter(isUsed)) {
    times.set(row.cycle, (times.get(row.cycle) ?? 0) + normalMs(row));
  }
  return times;
}

function occasionalOf(rows: readonly StudyRow[]): OccasionalWork {
  const { element: name, work, placement, unitsPerOccurrence } = rows[0]!;
  const timesMs = rows.filter(isUsed).map(normalMs);
  return {
    name,
    place: work === 'machine' ? 'external' : placement,
    everyParts: unitsPerOccurrence,
    timesMs,
    meanMs: observedMean(timesMs),
  };
}

import { changedWork, noChange } from '../../domain/cell/cell-change';
import { cellCycle } from '../../domain/cell/cell-cycle';
import type { CellWork } from '../../domain/cell/cell-work';
import { elementEffects, kindEffects } from '../../domain/cell/element-effects';
import type { PartInCell } from '../../domain/cell/next-step';
import type { CellData } from './use-cell';

/** A shop without turns is taken to work eight hours; it is told so. */
const ASSUMED_DAY_MS = 28_800_000;
/** A first try of the tablet is no working day. */
const SHORTEST_DAY_MS = 3_600_000;

export interface ReckonedPart extends PartInCell {
  readonly work: CellWork;
}

/** Each part of the cell as it is now: its work with what another person does, its cycle and its effects. */
export function reckonParts({ studies, settings }: CellData): ReckonedPart[] {
  const moved = Object.fromEntries(settings.byOther.map((name) => [name, 'other'] as const));
  return studies.map(({ partCode, work: timed }) => {
    const work = changedWork(timed, { ...noChange, moved });
    const effects = elementEffects(work);
    const cycle = cellCycle(work);
    return { partCode, work, cycle, effects, kinds: kindEffects(effects, cycle.partMs) };
  });
}

/** A day of the newest turns; null while they are too few to be one. */
export function recordedDayMs({ history }: CellData): number | null {
  const { dayMs } = history.days;
  return dayMs !== null && dayMs >= SHORTEST_DAY_MS ? dayMs : null;
}

export const dayMsOf = (cell: CellData) => recordedDayMs(cell) ?? ASSUMED_DAY_MS;

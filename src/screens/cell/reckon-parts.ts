import type { CellStudy } from '../../application/cell/read-cell-studies';
import { changedWork, noChange } from '../../domain/cell/cell-change';
import { type CellCycle, cellCycle } from '../../domain/cell/cell-cycle';
import type { CellWork } from '../../domain/cell/cell-work';
import { cyclePrecision } from '../../domain/cell/cycle-precision';
import { elementEffects } from '../../domain/cell/element-effects';
import { mixedWork } from '../../domain/cell/mixed-work';
import type { PartInCell } from '../../domain/cell/next-step';
import { secondOut } from '../../domain/cell/second-out';
import type { CellData } from './use-cell';

/** A shop without turns is taken to work eight hours; it is told so. */
const ASSUMED_DAY_MS = 28_800_000;
/** A first try of the tablet is no working day. */
const SHORTEST_DAY_MS = 3_600_000;

export interface ReckonedPart extends PartInCell {
  readonly key: string;
  readonly work: CellWork;
  readonly cycle: CellCycle;
  /** Half-width of the interval of its cycle, a share; null where there are too few cycles for one. */
  readonly precision: number | null;
  /** The study it is from; for the mix of all parts, the share of each instead. */
  readonly source: CellStudy | null;
  readonly mix: readonly { readonly partCode: string; readonly share: number }[];
}

/**
 * Each part of the cell as it is now: its work with what another person does, its cycle and its effects. Last, where
 * the newest turns tell how many of each were made, all of them in that mix.
 */
export function reckonParts({ studies, settings, history }: CellData): ReckonedPart[] {
  const moved = Object.fromEntries(settings.byOther.map((name) => [name, 'other'] as const));
  const parts = studies.map((source) => {
    const { partCode } = source;
    const work = changedWork(source.work, { ...noChange, moved });
    return { ...reckoned(work), key: `part ${partCode}`, partCode, source, mix: [] };
  });
  const made = parts.map(({ work, partCode }) => ({
    work,
    partCode,
    parts: history.days.partsByCode.get(partCode) ?? 0,
  }));
  const total = made.reduce((sum, own) => sum + own.parts, 0);
  if (made.filter((own) => own.parts > 0).length < 2) return parts;
  const mix = made.map(({ partCode, parts: count }) => ({ partCode, share: count / total }));
  return [...parts, { ...reckoned(mixedWork(made)!), key: 'mix', partCode: '', source: null, mix }];
}

function reckoned(work: CellWork) {
  return {
    work,
    cycle: cellCycle(work),
    wholeCycles: work.complete.length,
    effects: elementEffects(work),
    seconds: secondOut(work),
    precision: cyclePrecision(work),
  };
}

/** A day of the newest turns; null while they are too few to be one. */
export function recordedDayMs({ history }: CellData): number | null {
  const { dayMs } = history.days;
  return dayMs !== null && dayMs >= SHORTEST_DAY_MS ? dayMs : null;
}

export const dayMsOf = (cell: CellData) => recordedDayMs(cell) ?? ASSUMED_DAY_MS;

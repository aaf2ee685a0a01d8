import { cellCycle } from '../../domain/cell/cell-cycle';
import type { CellPlan, LotSizes } from '../../domain/cell/cell-plan';
import type { CellWork } from '../../domain/cell/cell-work';
import { dayMsOf } from './reckon-parts';
import type { CellData } from './use-cell';

export interface Setup extends LotSizes {
  readonly machines: number;
  readonly buffer: number;
}

/** The cell as the shop set it up. */
export function presentSetup({ settings }: CellData): Setup {
  const { arrivalLot, refillAt, trolley } = settings;
  return { machines: 1, buffer: 1, arrivalLot, refillAt, trolley };
}

/** The cell with that work as it is simulated: its lots, and the stoppages and defects of the shop's own turns. */
export function planCell(cell: CellData, work: CellWork, setup: Setup): CellPlan {
  const { settings, history } = cell;
  const { days } = history;
  const { externalMs, internalMs } = cellCycle(work);
  // What comes once a trolley comes as often as the trolley goes.
  const occasionals = work.occasionals.map((own) =>
    own.everyParts === settings.trolley && settings.trolley > 1 ? { ...own, everyParts: setup.trolley } : own,
  );
  return {
    ...setup,
    work: { ...work, occasionals },
    putDownWith: settings.putDownWith,
    dayMs: dayMsOf(cell),
    stops: days.stops,
    scrapShare: days.scrapShare,
    reworkShare: days.reworkShare,
    reworkMs: externalMs + internalMs,
  };
}

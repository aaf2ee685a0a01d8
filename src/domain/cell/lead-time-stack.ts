import { type LeadTimeTerms, leadTimeTerms } from '../../statistics/lead-time-terms';
import type { CellDays } from './cell-days';
import type { LotSizes } from './cell-plan';
import type { CellWork } from './cell-work';
import { flowTimeMs } from './flow-time';

/** The cell whose lead time is told in three terms. */
export interface StackedCell {
  readonly work: CellWork;
  readonly cycleMs: number;
  readonly partMs: number;
  readonly putDownWith: string;
  readonly lots: LotSizes;
  readonly days: CellDays;
}

/**
 * The mean lead time as waiting for the lot, work, and waiting for the trolley, milliseconds. The interval between
 * parts is the shop's own, stoppages in; before there are turns, that of the study.
 */
export function leadTimeStack({
  work,
  cycleMs,
  partMs,
  putDownWith,
  lots,
  days,
}: StackedCell): LeadTimeTerms {
  const { dayMs, parts } = days;
  const interval = dayMs !== null && parts > 0 ? (dayMs * days.days) / parts : partMs;
  return leadTimeTerms({ ...lots, interval, flowTime: flowTimeMs(work, cycleMs, putDownWith) });
}

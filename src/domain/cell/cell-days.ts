import { localDay } from '../day/local-day';
import { groupBy } from '../group-by';
import { NOT_STATED, type Turn } from '../turn/turn';
import type { StopCause } from './cell-plan';

/** What the shop's own turns tell about the days of a cell. Times in milliseconds. */
export interface CellDays {
  readonly days: number;
  /** Working time of a day: turns without their planned breaks; null without turns. */
  readonly dayMs: number | null;
  readonly stops: readonly StopCause[];
  readonly parts: number;
  /** How many of each code: the mix that the cell makes. */
  readonly partsByCode: ReadonlyMap<string, number>;
  /** Shares of the parts. */
  readonly scrapShare: number;
  readonly reworkShare: number;
}

/** Until a shop says which others do: the reason for the machine's own faults. */
export const machineReasons: readonly string[] = ['machine'];

/**
 * Reduces turns to what a simulation of the cell needs: how long a day is, what stops it how often and for how
 * long, set-ups among it, and how many parts are not good the first time.
 *
 * @param holding ids of the reasons while which the machine stands
 */
export function cellDays(turns: readonly Turn[], holding = machineReasons): CellDays {
  const spans = turns.flatMap(({ ledger }) => ledger);
  const time = (belongs: (category: string) => boolean) =>
    spans.reduce((sum, { category, fromMs, toMs }) => sum + (belongs(category) ? toMs - fromMs : 0), 0);
  const days = new Set(turns.map(({ startedAt }) => localDay(startedAt))).size;
  const workedMs = time((category) => category === 'cycle' || category === 'rework');
  const ended = turns
    .flatMap(({ stoppages }) => stoppages)
    .filter(({ category, toMs }) => category !== 'planned-break' && toMs !== null);
  const stops = [...groupBy(ended, ({ reason }) => reason)].map(
    ([reason, own]): StopCause => ({
      reason: reason || NOT_STATED,
      label: own[0]!.label,
      holdsMachine: holding.includes(reason),
      everyMs: workedMs / own.length,
      lengthsMs: own.map(({ fromMs, toMs }) => toMs! - fromMs),
    }),
  );
  const cycles = turns.flatMap((turn) => turn.cycles);
  const share = (outcome: string) =>
    cycles.length > 0 ? cycles.filter((own) => own.outcome === outcome).length / cycles.length : 0;
  return {
    days,
    dayMs: days > 0 ? time((category) => category !== 'planned-break') / days : null,
    stops: stops.filter(({ everyMs }) => everyMs > 0),
    parts: cycles.length,
    partsByCode: new Map(
      [...groupBy(cycles, ({ partCode }) => partCode)].map(([code, own]) => [code, own.length]),
    ),
    scrapShare: share('scrap'),
    reworkShare: share('rework'),
  };
}

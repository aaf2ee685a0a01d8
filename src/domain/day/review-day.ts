import { observedMean } from '../../statistics/observed-mean';
import { sampleStandardDeviation } from '../../statistics/sample-standard-deviation';
import { groupBy } from '../group-by';
import type { LedgerCategory } from '../turn/ledger-category';
import { ledgerTotals } from '../turn/ledger-totals';
import type { Cycle, Turn } from '../turn/turn';
import { localDay } from './local-day';

/** A day as the foreman reads it. Times in milliseconds. */
export interface DayReview {
  readonly day: string;
  readonly turns: number;
  /** Parts in the order of their codes. */
  readonly parts: readonly PartOfDay[];
  readonly done: number;
  readonly good: number;
  readonly elapsedMs: number;
  readonly totals: Readonly<Record<LedgerCategory, number>>;
  /** Time stopped by reason, longest first, not stated last. */
  readonly lost: readonly LostTime[];
}

/** The daily average of one part: net cycle, stoppages out. */
export interface PartOfDay {
  readonly part: string;
  readonly partCode: string;
  readonly n: number;
  readonly good: number;
  readonly rework: number;
  readonly scrap: number;
  readonly meanMs: number;
  /** Sample standard deviation; null below two parts. */
  readonly deviationMs: number | null;
  readonly shortestMs: number;
  readonly longestMs: number;
  /** The target that the last part of the day carried; null without one. */
  readonly targetMs: number | null;
  /** The target changed during the day: the one shown is the last. */
  readonly targetChanged: boolean;
}

export interface LostTime {
  readonly reason: string;
  readonly label: string;
  readonly count: number;
  readonly lostMs: number;
}

/** One day from the turns that began on it. Days without a turn are not there. */
export function reviewDay(day: string, turns: readonly Turn[]): DayReview {
  const cycles = turns.flatMap((turn) => turn.cycles);
  const ledger = turns.flatMap((turn) => turn.ledger);
  const totals = ledgerTotals(ledger);
  return {
    day,
    turns: turns.length,
    parts: reviewParts(cycles),
    done: cycles.length,
    good: cycles.filter(({ outcome }) => outcome !== 'scrap').length,
    elapsedMs: turns.reduce((sum, { lastAtMs }) => sum + lastAtMs, 0),
    totals,
    lost: lostTime(turns),
  };
}

/** Turns by the local day they began on, newest day first. */
export function turnsByDay(turns: readonly Turn[]): Map<string, Turn[]> {
  const newestFirst = [...turns].sort((a, b) => b.startedAt.wallMs - a.startedAt.wallMs);
  return groupBy(newestFirst, ({ startedAt }) => localDay(startedAt));
}

function reviewParts(cycles: readonly Cycle[]): PartOfDay[] {
  return [...groupBy(cycles, ({ part }) => part)]
    .map(([part, own]) => {
      const net = own.map(({ netMs }) => netMs);
      const count = (outcome: Cycle['outcome']) => own.filter((cycle) => cycle.outcome === outcome).length;
      const last = own.at(-1)!;
      return {
        part,
        partCode: last.partCode,
        n: own.length,
        good: count('good'),
        rework: count('rework'),
        scrap: count('scrap'),
        meanMs: observedMean(net),
        deviationMs: net.length > 1 ? sampleStandardDeviation(net) : null,
        shortestMs: Math.min(...net),
        longestMs: Math.max(...net),
        targetMs: last.targetMs,
        targetChanged: own.some(({ targetMs }) => targetMs !== last.targetMs),
      };
    })
    .sort((a, b) => a.partCode.localeCompare(b.partCode));
}

function lostTime(turns: readonly Turn[]): LostTime[] {
  const byReason = new Map<string, LostTime>();
  for (const turn of turns) {
    for (const { reason, label, category, fromMs, toMs } of turn.stoppages) {
      if (category === 'planned-break') continue;
      const before = byReason.get(reason) ?? { reason, label, count: 0, lostMs: 0 };
      const lostMs = before.lostMs + ((toMs ?? turn.lastAtMs) - fromMs);
      byReason.set(reason, { ...before, count: before.count + 1, lostMs });
    }
  }
  const isStated = ({ reason }: LostTime) => reason !== 'not-stated';
  return [...byReason.values()].sort(
    (a, b) => Number(isStated(b)) - Number(isStated(a)) || b.lostMs - a.lostMs,
  );
}

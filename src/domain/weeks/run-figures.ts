import { median } from '../../statistics/median';
import { dayFigures } from '../day/day-figures';
import { FEW_PARTS } from '../day/few-parts';
import type { PartAccount } from '../day/part-account';
import type { DaySummary } from '../day/summarise-day';

/** What can be followed over the weeks: three figures of all parts, or the daily average of one. */
export type RunFigure = 'efficiency' | 'per-good' | 'first-pass' | { readonly part: string };

/** One day of a run. Percent, or minutes. */
export interface RunValue {
  readonly day: string;
  readonly value: number;
  /** Parts that went into it. */
  readonly count: number;
  readonly isFew: boolean;
  /** Attended for less than two thirds of what the days are as a rule: a short day, or one that is not over. */
  readonly isPartDay: boolean;
  /** Minutes; null where none is set, and for all parts together. */
  readonly target: number | null;
}

const MINUTE_MS = 60_000;
/** Below this share of the usual attended time a day is a part of one. */
const PART_DAY = 2 / 3;

/** The daily values of a figure, oldest first; a day that has none is left out. */
export function runFigures(summaries: readonly DaySummary[], figure: RunFigure): RunValue[] {
  if (summaries.length === 0) return [];
  const wholeMs = PART_DAY * median(summaries.map(({ attendedMs }) => attendedMs));
  return [...summaries]
    .sort((a, b) => (a.day < b.day ? -1 : 1))
    .flatMap((day) => {
      const of = typeof figure === 'string' ? ofAllParts(day, figure) : ofPart(day, figure.part);
      return of ? [{ day: day.day, ...of, isPartDay: day.attendedMs < wholeMs }] : [];
    });
}

type Figure = Omit<RunValue, 'day' | 'isPartDay'>;

function ofAllParts(day: DaySummary, figure: Extract<RunFigure, string>): Figure | null {
  const { efficiency, perGoodMs } = dayFigures(day);
  const value = {
    efficiency: efficiency === null ? null : 100 * efficiency,
    'per-good': perGoodMs === null ? null : perGoodMs / MINUTE_MS,
    'first-pass': day.done > 0 ? (100 * day.firstTime) / day.done : null,
  }[figure];
  const count = figure === 'first-pass' ? day.done : day.good;
  return value === null ? null : { value, count, isFew: count < FEW_PARTS, target: null };
}

function ofPart(day: DaySummary, part: string): Figure | null {
  const account = day.parts.find((each) => each.part === part);
  if (!account || account.counted === 0) return null;
  return {
    value: meanNetMs(account) / MINUTE_MS,
    count: account.n,
    isFew: account.counted < FEW_PARTS,
    target: account.targetMs === null ? null : account.targetMs / MINUTE_MS,
  };
}

/** Mean net cycle of the counted parts, milliseconds. */
function meanNetMs({ netMs, counted }: PartAccount): number {
  return netMs / counted;
}

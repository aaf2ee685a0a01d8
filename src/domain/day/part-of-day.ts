import { observedMean } from '../../statistics/observed-mean';
import { sampleStandardDeviation } from '../../statistics/sample-standard-deviation';
import { groupBy } from '../group-by';
import type { PartOutcome } from '../records/turn-fact';
import type { Cycle } from '../turn/turn';
import { type AgainstTarget, againstTarget } from './against-target';
import { codeOfLine, lineOfPart } from './line-of-part';

/** The daily average of one part: net cycle, stoppages out. Times in milliseconds. */
export interface PartOfDay {
  readonly part: string;
  /** As the last part of the day carried it. */
  readonly partCode: string;
  /** Parts done. */
  readonly n: number;
  /** Of these, parts in the mean and the spread: no question is open about them, and nobody set them aside. */
  readonly counted: number;
  /** Good the first time. */
  readonly good: number;
  readonly rework: number;
  readonly scrap: number;
  /** Net times that count, in the order in which the parts were done: every figure here comes from them. */
  readonly netTimesMs: readonly number[];
  /** Null when no part counts, and so are shortest and longest. */
  readonly meanMs: number | null;
  /** Sample standard deviation; null below two parts. */
  readonly deviationMs: number | null;
  readonly shortestMs: number | null;
  readonly longestMs: number | null;
  /** The target that the last part of the day carried; null without one. */
  readonly targetMs: number | null;
  /** The target changed during the day: the one above is the last. */
  readonly targetChanged: boolean;
  readonly against: AgainstTarget | null;
}

/**
 * The parts of some cycles, one line a part, in the order of their codes. Parts that were made several at once are a
 * line of their own: a pair takes a time a part that no single one takes.
 */
export function partsOfDay(cycles: readonly Cycle[]): PartOfDay[] {
  // Two tablets, or two turns of one day, come in any order; "the last part of the day" is a matter of time.
  const inOrder = [...cycles].sort((a, b) => a.doneAt.wallMs - b.doneAt.wallMs);
  return [...groupBy(inOrder, lineOfPart)]
    .map(([part, own]) => reviewPart(part, own))
    .sort((a, b) => a.partCode.localeCompare(b.partCode, 'en', { numeric: true }));
}

function reviewPart(part: string, cycles: readonly Cycle[]): PartOfDay {
  const netTimesMs = cycles.filter(({ isCounted }) => isCounted).map(({ netMs }) => netMs);
  const count = (wanted: PartOutcome) => cycles.filter(({ outcome }) => outcome === wanted).length;
  const isEmpty = netTimesMs.length === 0;
  const last = cycles.at(-1)!;
  return {
    part,
    partCode: codeOfLine(last),
    n: cycles.length,
    counted: netTimesMs.length,
    good: count('good'),
    rework: count('rework'),
    scrap: count('scrap'),
    netTimesMs,
    meanMs: isEmpty ? null : observedMean(netTimesMs),
    deviationMs: netTimesMs.length > 1 ? sampleStandardDeviation(netTimesMs) : null,
    shortestMs: isEmpty ? null : Math.min(...netTimesMs),
    longestMs: isEmpty ? null : Math.max(...netTimesMs),
    targetMs: last.targetMs,
    targetChanged: cycles.some(({ targetMs }) => targetMs !== last.targetMs),
    against: againstTarget(cycles),
  };
}

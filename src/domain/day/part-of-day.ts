import { observedMean } from '../../statistics/observed-mean';
import { sampleStandardDeviation } from '../../statistics/sample-standard-deviation';
import { groupBy } from '../group-by';
import type { PartOutcome } from '../records/turn-fact';
import type { Cycle } from '../turn/turn';
import { type AgainstTarget, againstTarget } from './against-target';

/** The daily average of one part: net cycle, stoppages out. Times in milliseconds. */
export interface PartOfDay {
  readonly part: string;
  /** As the last part of the day carried it. */
  readonly partCode: string;
  readonly n: number;
  /** Good the first time. */
  readonly good: number;
  readonly rework: number;
  readonly scrap: number;
  /** Net times in the order in which the parts were done: the numbers that every figure here comes from. */
  readonly netTimesMs: readonly number[];
  readonly meanMs: number;
  /** Sample standard deviation; null below two parts. */
  readonly deviationMs: number | null;
  readonly shortestMs: number;
  readonly longestMs: number;
  /** The target that the last part of the day carried; null without one. */
  readonly targetMs: number | null;
  /** The target changed during the day: the one above is the last. */
  readonly targetChanged: boolean;
  readonly against: AgainstTarget | null;
}

/** The parts of some cycles, one line a part, in the order of their codes. */
export function partsOfDay(cycles: readonly Cycle[]): PartOfDay[] {
  // Two tablets, or two turns of one day, come in any order; "the last part of the day" is a matter of time.
  const inOrder = [...cycles].sort((a, b) => a.doneAt.wallMs - b.doneAt.wallMs);
  return [...groupBy(inOrder, ({ part }) => part)]
    .map(([part, own]) => reviewPart(part, own))
    .sort((a, b) => a.partCode.localeCompare(b.partCode, 'en', { numeric: true }));
}

function reviewPart(part: string, cycles: readonly Cycle[]): PartOfDay {
  const netTimesMs = cycles.map(({ netMs }) => netMs);
  const count = (wanted: PartOutcome) => cycles.filter(({ outcome }) => outcome === wanted).length;
  const last = cycles.at(-1)!;
  return {
    part,
    partCode: last.partCode,
    n: cycles.length,
    good: count('good'),
    rework: count('rework'),
    scrap: count('scrap'),
    netTimesMs,
    meanMs: observedMean(netTimesMs),
    deviationMs: netTimesMs.length > 1 ? sampleStandardDeviation(netTimesMs) : null,
    shortestMs: Math.min(...netTimesMs),
    longestMs: Math.max(...netTimesMs),
    targetMs: last.targetMs,
    targetChanged: cycles.some(({ targetMs }) => targetMs !== last.targetMs),
    against: againstTarget(cycles),
  };
}

import { sampleStandardDeviation } from '../../statistics/sample-standard-deviation';
import { groupBy } from '../group-by';
import type { Cycle } from '../turn/turn';
import { type AgainstTarget, againstTarget } from './against-target';
import { codeOfLine, lineOfPart } from './line-of-part';
import type { AttendedTurn } from './summarise-day';

/** The account of one part over one day: sums, so that days add up. Times in milliseconds. */
export interface PartAccount {
  readonly part: string;
  /** As the last part of the day carried it. */
  readonly partCode: string;
  /** Parts done, whatever became of them. */
  readonly n: number;
  /** Of these, parts that are in the mean. */
  readonly counted: number;
  /** Good the first time. */
  readonly good: number;
  readonly rework: number;
  readonly scrap: number;
  /** Σ net cycle of the counted parts. */
  readonly netMs: number;
  /** The same with what stood still between their taps: stoppages and calls away. */
  readonly grossMs: number;
  /** Of the net cycles, sample standard deviation; null below two parts. */
  readonly deviationMs: number | null;
  readonly shortestMs: number | null;
  readonly longestMs: number | null;
  /** The target that the last part of the day carried; null without one. */
  readonly targetMs: number | null;
  readonly targetChanged: boolean;
  /** Σ target, and Σ net cycle, of the counted parts that carried one. */
  readonly allowedMs: number;
  readonly takenMs: number;
  /** Net times against the targets that the good ones earned, as every screen has it. */
  readonly against: AgainstTarget | null;
  /** Σ target of the parts that are good at last. */
  readonly earnedMs: number;
  /** Parts good at last that carried no target: they earn nothing, and no efficiency can be told. */
  readonly untargeted: number;
  /** Attended time from the tap before each part to its own, set-ups and breaks in it included. */
  readonly attendedMs: number;
  /**
   * Of the persons who made other parts too that day: how many took more of its target than of the others', and
   * how many took less. Nobody is named.
   */
  readonly peopleOver: number;
  readonly peopleInside: number;
}

/** A part done with the attended time that its tap closed. */
interface Closed {
  readonly cycle: Cycle;
  readonly stoppedMs: number;
  readonly attendedMs: number;
}

/** The accounts of a day's parts, in the order of their codes. */
export function partAccounts(turns: readonly AttendedTurn[]): PartAccount[] {
  const closed = turns.flatMap(closedByTaps).sort((a, b) => a.cycle.doneAt.wallMs - b.cycle.doneAt.wallMs);
  return [...groupBy(closed, ({ cycle }) => lineOfPart(cycle))]
    .map(([part, own]) => partAccount(part, own, closed))
    .sort((a, b) => a.partCode.localeCompare(b.partCode, 'en', { numeric: true }));
}

function closedByTaps({ turn, spans }: AttendedTurn): Closed[] {
  let place = 0;
  return turn.cycles.map((cycle) => {
    let stoppedMs = 0;
    let attendedMs = 0;
    // A span may reach over a tap only where a tap was halved: its rest belongs to the next part.
    for (; place < spans.length && spans[place]!.fromMs < cycle.toMs; place += 1) {
      const { category, fromMs, toMs } = spans[place]!;
      const lengthMs = Math.min(toMs, cycle.toMs) - Math.max(fromMs, cycle.fromMs);
      attendedMs += Math.max(0, lengthMs);
      if (category === 'stoppage' || category === 'called-away') stoppedMs += Math.max(0, lengthMs);
      if (toMs > cycle.toMs) break;
    }
    return { cycle, stoppedMs, attendedMs };
  });
}

function partAccount(part: string, own: readonly Closed[], all: readonly Closed[]): PartAccount {
  const cycles = own.map(({ cycle }) => cycle);
  const counted = own.filter(({ cycle }) => cycle.isCounted);
  const netTimesMs = counted.map(({ cycle }) => cycle.netMs);
  const measured = counted.filter(({ cycle }) => isTargeted(cycle));
  const accepted = cycles.filter(({ outcome }) => outcome !== 'scrap');
  const ownOthers = againstOwnOthers(part, all);
  const last = cycles.at(-1)!;
  return {
    part,
    partCode: codeOfLine(last),
    n: cycles.length,
    counted: counted.length,
    good: cycles.filter(({ outcome }) => outcome === 'good').length,
    rework: cycles.filter(({ outcome }) => outcome === 'rework').length,
    scrap: cycles.length - accepted.length,
    netMs: sum(netTimesMs, (ms) => ms),
    grossMs: sum(counted, ({ cycle, stoppedMs }) => cycle.netMs + stoppedMs),
    deviationMs: netTimesMs.length > 1 ? sampleStandardDeviation(netTimesMs) : null,
    shortestMs: netTimesMs.length > 0 ? Math.min(...netTimesMs) : null,
    longestMs: netTimesMs.length > 0 ? Math.max(...netTimesMs) : null,
    targetMs: last.targetMs,
    targetChanged: cycles.some(({ targetMs }) => targetMs !== last.targetMs),
    allowedMs: sum(measured, ({ cycle }) => cycle.targetMs!),
    takenMs: sum(measured, ({ cycle }) => cycle.netMs),
    against: againstTarget(cycles),
    earnedMs: sum(accepted, (cycle) => (isTargeted(cycle) ? cycle.targetMs! : 0)),
    untargeted: accepted.filter((cycle) => !isTargeted(cycle)).length,
    attendedMs: sum(own, ({ attendedMs }) => attendedMs),
    peopleOver: ownOthers.filter((ratio) => ratio > 1).length,
    peopleInside: ownOthers.filter((ratio) => ratio < 1).length,
  };
}

/** Of each person, the share of target on this part over that on the person's other parts. */
function againstOwnOthers(part: string, all: readonly Closed[]): number[] {
  const measured = all.filter(({ cycle }) => cycle.isCounted && isTargeted(cycle) && !cycle.isShared);
  return [...groupBy(measured, ({ cycle }) => cycle.person).values()].flatMap((own) => {
    const share = (isThis: boolean) => {
      const those = own.filter(({ cycle }) => (lineOfPart(cycle) === part) === isThis);
      return sum(those, ({ cycle }) => cycle.netMs) / sum(those, ({ cycle }) => cycle.targetMs!);
    };
    const ratio = share(true) / share(false);
    return Number.isFinite(ratio) ? [ratio] : [];
  });
}

function isTargeted({ targetMs }: Cycle): boolean {
  return targetMs !== null && targetMs > 0;
}

function sum<Item>(items: readonly Item[], of: (item: Item) => number): number {
  return items.reduce((total, item) => total + of(item), 0);
}

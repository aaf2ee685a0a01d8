import type { Stamp } from '../records/stamp';
import { earnedMs } from './earned-time';
import type { LedgerCategory } from './ledger-category';
import { ownOfTurn } from './own-of-turn';
import type { PlannedShift } from './planned-shift';
import type { Turn } from './turn';
import { turnNow } from './turn-now';

/** What the operator sees, at one moment. Times in milliseconds. */
export interface Pace {
  /** Of the part in hand, stoppages out; a gap that nobody explained is in it, and in no position. */
  readonly partElapsedMs: number;
  /** The same without planned breaks that nobody tapped. */
  readonly partWorkedMs: number;
  /** Of the stoppage that lasts; null while work runs. */
  readonly stoppedForMs: number | null;
  /** Since the turn began. */
  readonly turnElapsedMs: number;
  /** Ahead positive, behind negative, stoppages out; null when no part done had a target, and while learning. */
  readonly aheadMs: number | null;
  /** The same with stoppages in, also those that were said of a part afterwards; planned breaks out. */
  readonly planAheadMs: number | null;
  /** `aheadMs` in parts of the kind in hand; null without a target for it. */
  readonly partsAhead: number | null;
  /** End of the planned break in which the position stands still now, since the turn began; null outside of one. */
  readonly breakEndsAtMs: number | null;
}

/**
 * Position against the target, counted in minutes and not in pieces, so that a run of large parts does
 * not read as a slow one.
 *
 * ahead = Σ target of good parts done − Σ net time of all parts done − what the part in hand has taken
 * beyond its own target. A scrapped part takes time and earns none. Parts without a target, and parts that
 * are in no mean, count on neither side; a part that a stop was in, of which nobody knows how long it was, costs the plan
 * what it took beyond its target. After a change of person it is the position of whoever is there now; the
 * part that the two share is in neither's.
 */
export function pace(turn: Turn, now: Stamp): Pace {
  const nowMs = turnNow(turn, now);
  const open = turn.status === 'stopped' ? turn.stoppages.at(-1)! : null;
  const runningUntilMs = open ? open.fromMs : nowMs;
  const partElapsedMs = turn.isPartBegun
    ? Math.max(0, runningUntilMs - turn.partBeganAtMs - turn.partStoppedMs)
    : 0;

  const { cycles, ledger } = ownOfTurn(turn);
  const measured = cycles.filter(({ targetMs, isCounted }) => isCounted && targetMs !== null);
  const { targetMs, partsPerTap = 1 } = turn.inHand;
  const isShared = turn.people.at(-1)!.fromMs > turn.partBeganAtMs;
  const isMeasured = targetMs !== null && turn.status !== 'ended' && !isShared;
  const breakMs = breakTime(turn, runningUntilMs);
  const overMs = isMeasured
    ? Math.max(0, partElapsedMs - turn.partGapMs - breakMs - targetMs * partsPerTap)
    : 0;
  const targetsMs = measured.reduce((sum, cycle) => sum + earnedMs(cycle), 0);
  const takenMs = measured.reduce((sum, { netMs }) => sum + netMs, 0);
  // From the ledger, so that what was reclassified counts where it was put.
  const stoppedMs =
    ledger.reduce((sum, span) => sum + (costsThePlan(span) ? span.toMs - span.fromMs : 0), 0) +
    (open && costsThePlan(open) ? nowMs - turn.lastAtMs : 0);

  const forgottenMs = cycles
    .filter(
      ({ targetMs, judgedAs, setAside }) => targetMs !== null && judgedAs === 'interrupted' && !setAside,
    )
    .reduce((sum, cycle) => sum + cycle.netMs - earnedMs(cycle), 0);

  const hasTarget = !turn.isLearning && (measured.length > 0 || targetMs !== null);
  const aheadMs = hasTarget ? targetsMs - takenMs - overMs : null;
  return {
    partElapsedMs,
    partWorkedMs: Math.max(0, partElapsedMs - breakMs),
    stoppedForMs: open ? nowMs - open.fromMs : null,
    turnElapsedMs: nowMs,
    aheadMs,
    planAheadMs: aheadMs === null ? null : aheadMs - stoppedMs - forgottenMs,
    breakEndsAtMs: turn.status === 'running' ? (untapped(turn).find(isAt(nowMs))?.toMs ?? null) : null,
    partsAhead: aheadMs === null || !targetMs ? null : aheadMs / targetMs,
  };
}

/**
 * Time of planned breaks in the part in hand, in which the position stands still as long as nobody says otherwise. A
 * stop, or a gap that is asked about, goes before what was planned.
 */
function breakTime(turn: Turn, untilMs: number): number {
  return untapped(turn).reduce(
    (sum, { fromMs, toMs }) =>
      sum + Math.max(0, Math.min(toMs, untilMs) - Math.max(fromMs, turn.partBeganAtMs)),
    0,
  );
}

function untapped({ planned, stoppages, gaps }: Turn): PlannedShift['breaks'] {
  return planned.breaks.filter(({ fromMs, toMs }) => {
    const isInside = (other: { fromMs: number; toMs: number | null }) =>
      other.fromMs < toMs && (other.toMs ?? toMs) > fromMs;
    return !stoppages.some(isInside) && !gaps.some(isInside);
  });
}

function isAt(ms: number) {
  return ({ fromMs, toMs }: { fromMs: number; toMs: number }) => fromMs <= ms && ms < toMs;
}

function costsThePlan({ category }: { category: LedgerCategory }): boolean {
  return category !== 'cycle' && category !== 'unaccounted' && category !== 'planned-break';
}

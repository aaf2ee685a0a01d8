import { quantiles } from '../../statistics/quantiles';
import { seededRandom } from '../../statistics/seeded-random';
import { goodSoFar } from './good-so-far';
import { type PartSpan, partSpans } from './part-spans';
import type { Turn } from './turn';
import { turnDrift } from './turn-drift';
import { endOfWork, workBetween } from './working-line';

/** From the tenth of the tries to the ninetieth, with the middle. */
export interface Range {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** Where a turn is heading. */
export interface Projection {
  /** When the parts that are wanted are done, milliseconds since the turn began; null where nobody said how many. */
  readonly finishMs: Range | null;
  /** Good parts of the turn when its shift ends; null outside of a shift, and once it is over. */
  readonly partsByEnd: Range | null;
  /** The same at the mean time of the parts it was reckoned from, with nothing lost any more: what stops cost is the rest. */
  readonly undisturbedByEnd: number | null;
  /** Parts of this turn, and turns before it, that it was reckoned from. */
  readonly from: { readonly parts: number; readonly turns: number };
}

/** Counted parts before which nothing is said: fewer give a range that helps nobody, or one that lies. */
export const FEWEST = 10;
/** A turn before this one is a witness when it lasted this share of what this one is heading for … */
const OF_SUBSTANCE = 0.25;
/** … and its parts are of the same order: neither so many times as long nor so many times as short. */
const OF_ORDER = 3;
const RECENT = 30;
const TRIES = 200;
/** Parts of one kind often come together, so kinds are drawn in runs. */
const RUN = 20;
/** A try that has made this many goes on for nobody. */
const MOST = 2_000;
/** Stored, so that the same records give the same range tomorrow. */
const SEED = 20_261_126;

/**
 * When the parts wanted will be done, and how many there will be at the end of the shift, as a range.
 *
 * Formula: 200 tries. Each draws as many of the last 30 counted parts, with replacement, for the pace; then part after part
 *   work = time of a drawn part × (target of the part to come / target of the drawn one) × drift
 *   lost = what was lost with a part, drawn from one turn out of this one and its witnesses
 * where drift is by how much the second half of one turn, drawn likewise, differed from its first. Witnesses are turns
 * before this one of ten counted parts and more that take a third to three times as long as those of now, and that
 * lasted a quarter of what this one will: a trial of a few minutes tells nothing about a shift, and parts of half an
 * hour lose more with each than parts of a minute. This turn tells of drift from 30 counted parts on; its halves are chance until then.
 * Parts to come are of the kind in hand if the last 30 were, and otherwise runs of parts as they came in these turns. The
 * part in hand has what it took so far behind it. Work walks the breaks of the calendar. The range is P10 to P90 of the
 * tries.
 * Source: B. Efron and R. J. Tibshirani, An Introduction to the Bootstrap, 1993, chapter 8: whole clusters are drawn.
 *
 * Null before ten counted parts, while learning, and once nothing is left. In a planned break it stands still.
 *
 * @param before turns of the shop before this one; may be empty
 * @param nowMs since the turn began
 */
export function projectFinish(turn: Turn, before: readonly Turn[], nowMs: number): Projection | null {
  const own = partSpans(turn);
  const recent = counted(own).slice(-RECENT);
  if (turn.isLearning || recent.length < FEWEST) return null;
  const done = goodSoFar(turn);
  const left = turn.wantedParts === null ? null : Math.max(0, turn.wantedParts - done);
  const { breaks, endsAtMs } = turn.planned;
  const untilEndMs = endsAtMs === null || endsAtMs <= nowMs ? null : workBetween(nowMs, endsAtMs, breaks);
  if (left === 0 || (left === null && !untilEndMs)) return null;

  const ownMeanMs = meanWork(recent);
  const headingForMs = nowMs + Math.max(untilEndMs ?? 0, (left ?? 0) * ownMeanMs);
  const witnesses = before
    .filter(({ lastAtMs }) => lastAtMs >= OF_SUBSTANCE * headingForMs)
    .map(partSpans)
    .filter((spans) => {
      const ratio = meanWork(spans) / ownMeanMs;
      return counted(spans).length >= FEWEST && ratio * OF_ORDER >= 1 && ratio <= OF_ORDER;
    });
  const turns = [own, ...witnesses];
  const isOneKind = recent.every(({ part }) => part === turn.inHand.part);
  const ahead: readonly (readonly PartSpan[])[] = isOneKind ? [recent] : turns;
  const drifts = [recent.length < RECENT ? 1 : turnDrift(own), ...witnesses.map(turnDrift)];
  const spentMs = workBetween(turn.partBeganAtMs, nowMs, breaks);
  const handsMs = Math.max(0, spentMs - turn.partStoppedMs);
  const random = seededRandom(SEED);
  const draw = <Item>(from: readonly Item[]): Item => from[Math.floor(random() * from.length)]!;
  const tries = Array.from({ length: TRIES }, () => {
    const pace = recent.map(() => draw(recent));
    const losses = draw(turns);
    const drift = draw(drifts);
    let [run, place]: [readonly PartSpan[], number] = [[], 0];
    let [workMs, good] = [-spentMs, 0];
    let byEnd: number | null = null;
    for (let part = 0; part < MOST && good !== left; part += 1) {
      if (part % RUN === 0) {
        run = draw(ahead);
        place = Math.floor(random() * run.length);
      }
      const drawn = draw(pace);
      const next = run[(place + part) % run.length]!;
      const scale = drawn.targetMs && next.targetMs ? (next.targetMs / drawn.targetMs) * drift : 1;
      // What the part in hand has taken beyond its own time is no time saved on the next.
      workMs = Math.max(0, workMs + drawn.workMs * scale + draw(losses).lostMs);
      if (byEnd === null && untilEndMs !== null && workMs > untilEndMs) byEnd = done + good;
      if (byEnd !== null && left === null) break;
      if (drawn.isGood) good += 1;
    }
    return { workMs, byEnd: byEnd ?? done + good };
  });
  const atMs = (workMs: number) => endOfWork(nowMs, workMs, breaks);
  return {
    finishMs: left === null ? null : mapped(rangeOf(tries.map(({ workMs }) => workMs)), atMs),
    partsByEnd: untilEndMs === null ? null : rangeOf(tries.map(({ byEnd }) => byEnd)),
    undisturbedByEnd: untilEndMs === null ? null : done + Math.floor((untilEndMs + handsMs) / ownMeanMs),
    from: { parts: recent.length, turns: witnesses.length },
  };
}

/** Nothing can be said yet: too few parts that count lie behind. */
export function isTooEarly(turn: Turn): boolean {
  return counted(partSpans(turn)).length < FEWEST;
}

function counted(spans: readonly PartSpan[]): PartSpan[] {
  return spans.filter(({ isCounted }) => isCounted);
}

/** Of the counted parts, milliseconds a part. */
function meanWork(spans: readonly PartSpan[]): number {
  const clean = counted(spans);
  return clean.reduce((sum, { workMs }) => sum + workMs, 0) / clean.length;
}

function rangeOf(values: readonly number[]): Range {
  const [p10, p50, p90] = quantiles(values, [0.1, 0.5, 0.9]);
  return { p10: p10!, p50: p50!, p90: p90! };
}

function mapped({ p10, p50, p90 }: Range, map: (value: number) => number): Range {
  return { p10: map(p10), p50: map(p50), p90: map(p90) };
}

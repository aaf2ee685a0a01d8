import { median } from '../../statistics/median';
import { SHORTEST_GAP_MS } from './find-gaps';
import type { PartTapped } from './part-tapped';
import type { Cycle } from './turn';
import type { TurnRemarks } from './turn-remarks';

/** Of the recent median: so long that two parts may lie behind one tap, and not so long that it is a stoppage. */
const TWO_PARTS_FROM = 1.7;
const TWO_PARTS_TO = 2.6;
/** Of the recent median, and at least a gap beyond it: so long that a stop may have been forgotten. */
const LONG_FROM = 3;
/** So many in a row are asked about; whatever comes after them is no forgotten stop but another kind of work. */
const LONG_IN_A_ROW = 2;
/** Fewer parts than this say nothing about what is usual. */
const RECENT = 5;
/** No part is made in less: what a gap or a stoppage leaves of one is a remainder and no time of a part. */
const REMAINDER_MS = 1_500;

/**
 * Cycles from the parts tapped and their net times. Which of them count in means is asked, never decided: what
 * looks like two parts, or as if a stop was forgotten in it, and what holds an open gap or a planned break, stays out until a person says. A part of which
 * stops and gaps left no time is a part done, and in no mean: it was made, and nobody knows in what time.
 *
 * @param spansBreak keys of the parts that a planned break lies in, of which nobody said whether it was taken
 */
export function judgeCycles(
  parts: readonly PartTapped[],
  netTimesMs: readonly number[],
  remarks: Pick<TurnRemarks, 'cycles' | 'recoded' | 'setAside' | 'outcomes' | 'taps' | 'workedBreaks'>,
  spansBreak: ReadonlySet<string>,
): Cycle[] {
  const recent = new Map<string, number[]>();
  const longInARow = new Map<string, number>();
  const kindOf = (tapped: PartTapped) => {
    const { part, partsPerTap: together = 1 } = remarks.recoded.get(tapped.key) ?? tapped;
    return `${part} ${together}`;
  };
  // The first parts of a kind have too few before them: those after them show what is usual.
  const andAfter = (usual: readonly number[], place: number, kind: string) => {
    const times = [...usual];
    for (let at = place + 1; at < parts.length && times.length < RECENT; at += 1)
      if (kindOf(parts[at]!) === kind) times.push(netTimesMs[at]!);
    return times;
  };
  return parts.flatMap((tapped, place) => {
    const { key, isEntered, touchMs } = tapped;
    const as = remarks.recoded.get(key) ?? tapped;
    const { partsPerTap: together = 1 } = as;
    const said = remarks.cycles.get(key);
    const netMs = touchMs ?? netTimesMs[place]!;
    const kind = kindOf(tapped);
    const usual = recent.get(kind) ?? [];
    const canBeLong = said === undefined && touchMs === null && tapped.isUnbroken;
    const usualMs = usualTime(usual, netMs);
    const longMs = usual.length < RECENT ? usualTime(andAfter(usual, place, kind), netMs) : usualMs;
    const isLong = isFarLonger(netMs, longMs);
    const inARow = longInARow.get(kind) ?? 0;
    const doubt = tapped.hasOpenGap
      ? 'gap'
      : spansBreak.has(key)
        ? 'planned-break'
        : canBeLong && isAboutTwice(netMs, usualMs)
          ? 'two-parts'
          : canBeLong && isLong && inARow < LONG_IN_A_ROW && !isSaidWork(key, remarks.workedBreaks)
            ? 'long-part'
            : null;
    longInARow.set(kind, isLong ? inARow + 1 : 0);
    const setAside = remarks.setAside.get(key) ?? '';
    const isMeant = touchMs !== null || remarks.taps.get(key) === true;
    const hasTime = netMs >= (isMeant ? 1 : REMAINDER_MS);
    const isSaidOut = said === 'interrupted' || said === 'first-off' || setAside !== '';
    const isCounted = doubt === null && hasTime && !isSaidOut && !isEntered;
    // Named one by one: a tap is read with every tap after it, and spreading it would take ten times as long.
    const cycle: Cycle = {
      key,
      part: as.part,
      partCode: as.partCode,
      targetMs: as.targetMs,
      doneAt: tapped.doneAt,
      person: tapped.person,
      isShared: tapped.isShared,
      fromMs: tapped.fromMs,
      toMs: tapped.toMs,
      netMs,
      outcome: tapped.outcome,
      defect: tapped.defect,
      isCounted,
      together,
      doubt,
      judgedAs: said ?? null,
      steps: tapped.steps,
      setAside,
      reworkMs: 0,
      isLearning: false,
      isEntered,
    };
    const taps = said === 'two-parts' ? 2 : 1;
    if (isCounted) {
      for (let tap = 0; tap < taps; tap += 1) usual.push(netMs / taps);
      usual.splice(0, usual.length - RECENT);
      recent.set(kind, usual);
    }
    const count = taps * together;
    return count === 1 ? cycle : shares(cycle, count, remarks);
  });
}

/** Median of the recent parts; 0 where they are too few, or where the part is short beside any median of them. */
function usualTime(usual: readonly number[], netMs: number): number {
  if (usual.length < RECENT || netMs < TWO_PARTS_FROM * Math.min(...usual)) return 0;
  return median(usual);
}

function isAboutTwice(netMs: number, usualMs: number): boolean {
  return usualMs > 0 && netMs >= TWO_PARTS_FROM * usualMs && netMs <= TWO_PARTS_TO * usualMs;
}

function isFarLonger(netMs: number, usualMs: number): boolean {
  return usualMs > 0 && netMs > LONG_FROM * usualMs && netMs - usualMs >= SHORTEST_GAP_MS;
}

/** Somebody was asked about a planned break in it, and said that work went on. */
function isSaidWork(key: string, workedBreaks: ReadonlySet<string>): boolean {
  return [...workedBreaks].some((name) => name.startsWith(`${key} `));
}

/** Several parts for one tap, with the same time each. The last one keeps the name of the tap. */
function shares(cycle: Cycle, count: number, { outcomes }: Pick<TurnRemarks, 'outcomes'>): Cycle[] {
  const place = (of: number, ms: number) => Math.floor((ms * of) / count);
  return Array.from({ length: count }, (_, before) => {
    const isLast = before === count - 1;
    const key = isLast ? cycle.key : `${cycle.key}/${before + 1}`;
    const judged = outcomes.get(key);
    const fromMs = cycle.fromMs + place(before, cycle.toMs - cycle.fromMs);
    return {
      ...cycle,
      key,
      fromMs,
      toMs: cycle.fromMs + place(before + 1, cycle.toMs - cycle.fromMs),
      netMs: place(before + 1, cycle.netMs) - place(before, cycle.netMs),
      ...(isLast ? {} : { outcome: judged?.outcome ?? 'good', defect: judged?.defect ?? '' }),
    };
  });
}

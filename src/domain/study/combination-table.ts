import type { WorkKind } from '../shop/element-definition';
import { startsWith } from './starts-with';
import type { StudySummary } from './summarise-study';

/** A stretch of one step on the time axis, milliseconds from the beginning of the cycle. */
export interface CombinationBar {
  readonly kind: 'manual' | 'walking' | 'automatic' | 'waiting';
  readonly fromMs: number;
  readonly toMs: number;
}

export interface CombinationStep {
  readonly element: string;
  readonly elementNo: number;
  readonly work: WorkKind;
  /** Normal time a work unit. */
  readonly normalMs: number;
  readonly bars: readonly CombinationBar[];
  /** Of a machine's: the element of the operator with whose end it starts; empty for any other. */
  readonly startsAfter: string;
}

/** The standardized work combination table in numbers: who works when in one cycle that repeats. */
export interface CombinationTable {
  readonly steps: readonly CombinationStep[];
  readonly cycleMs: number;
  readonly totals: Readonly<Record<CombinationBar['kind'], number>>;
}

/** Enough cycles for the machine's run of one to reach into the next as it always will. */
const CYCLES = 3;

/**
 * Lays the elements of a study on a time axis. The machine starts as the operator ends the external element before
 * it in the method; internal work goes on beside it, external work waits until it stops. Of three cycles the middle one is
 * shown, so that a run that passes the end of the cycle comes in again at zero. The cycle is external work and the
 * longer of internal work and the machine's run, as in the summary; occasional work is not drawn.
 *
 * Null while an element has no time, or where nobody works.
 */
export function combinationTable({ elements }: StudySummary): CombinationTable | null {
  const inCycle = elements.filter(({ elementClass }) => elementClass === 'repetitive');
  if (inCycle.some(({ normalPerUnitMs }) => normalPerUnitMs === null)) return null;
  if (!inCycle.some(({ work, normalPerUnitMs }) => work !== 'machine' && normalPerUnitMs! > 0)) return null;

  const started = inCycle.flatMap(({ work }, place) =>
    work === 'machine' ? [{ place, by: startsWith(inCycle, place) }] : [],
  );
  const placed: { place: number; bar: CombinationBar }[] = [];
  const begins: number[] = [];
  let nowMs = 0;
  let machineUntilMs = 0;
  let lastByHand = inCycle.findLastIndex(({ work }) => work !== 'machine');
  for (let cycle = 0; cycle < CYCLES; cycle += 1) {
    let hasBegun = false;
    for (const [place, { work, placement, normalPerUnitMs }] of inCycle.entries()) {
      if (work === 'machine') continue;
      if (placement === 'external' && machineUntilMs > nowMs) {
        placed.push({ place: lastByHand, bar: { kind: 'waiting', fromMs: nowMs, toMs: machineUntilMs } });
        nowMs = machineUntilMs;
      }
      if (!hasBegun) begins.push(nowMs);
      hasBegun = true;
      const kind = work === 'walking' ? 'walking' : 'manual';
      placed.push({ place, bar: { kind, fromMs: nowMs, toMs: nowMs + normalPerUnitMs! } });
      nowMs += normalPerUnitMs!;
      lastByHand = place;
      for (const machine of started.filter(({ by }) => by === place)) {
        const fromMs = Math.max(nowMs, machineUntilMs);
        machineUntilMs = fromMs + inCycle[machine.place]!.normalPerUnitMs!;
        placed.push({ place: machine.place, bar: { kind: 'automatic', fromMs, toMs: machineUntilMs } });
      }
    }
  }
  const [, fromMs, toMs] = begins as [number, number, number];
  const inWindow = placed.flatMap(({ place, bar }) => {
    const clipped = {
      kind: bar.kind,
      fromMs: Math.max(bar.fromMs, fromMs) - fromMs,
      toMs: Math.min(bar.toMs, toMs) - fromMs,
    };
    return clipped.toMs > clipped.fromMs ? [{ place, bar: clipped }] : [];
  });
  const totals = { manual: 0, walking: 0, automatic: 0, waiting: 0 };
  for (const { bar } of inWindow) totals[bar.kind] += bar.toMs - bar.fromMs;
  return {
    steps: inCycle.map(({ element, elementNo, work, normalPerUnitMs }, place) => ({
      element,
      elementNo,
      work,
      normalMs: normalPerUnitMs!,
      startsAfter: inCycle[started.find((one) => one.place === place)?.by ?? -1]?.element ?? '',
      bars: inWindow.filter((one) => one.place === place).map(({ bar }) => bar),
    })),
    cycleMs: toMs - fromMs,
    totals,
  };
}

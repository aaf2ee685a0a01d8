import type { StudyHeading } from '../records/study-fact';
import { cycleOrder, hasTwoLanes } from './study';
import { newReading, type WatchInHand } from './watch-in-hand';

/**
 * Which elements the operator's lane holds, and which of the machine's begin with which break point. In a study of
 * two lanes one tap is one event: the break point after which the method names a machine element starts it.
 */
export function lanesOf({ elements, lanes = 1 }: StudyHeading): {
  order: readonly number[];
  after: ReadonlyMap<number, readonly number[]>;
} {
  const all = cycleOrder(elements);
  if (lanes === 1 || !hasTwoLanes(elements)) return { order: all, after: new Map() };
  const order = all.filter((index) => elements[index]?.work !== 'machine');
  const after = new Map<number, number[]>();
  let last = order.at(-1)!;
  const first: number[] = [];
  for (const index of all) {
    if (elements[index]?.work !== 'machine') last = index;
    else {
      after.set(last, [...(after.get(last) ?? []), index]);
      if (index < order[0]!) first.push(index);
    }
  }
  return { order, after: after.set(-1, first) };
}

/** The machine starts. If it still runs, nobody saw it stop: that run has no time. */
export function beginMachines(study: WatchInHand, indexes: readonly number[], atMs: number): void {
  const [elementIndex, ...rest] = indexes;
  if (elementIndex === undefined) return;
  missMachine(study, atMs);
  const { watch } = study;
  watch.machine = { elementIndex, cycle: watch.cycle, beganAtMs: atMs, clockFlag: '' };
  watch.machineNext = rest;
}

/** The machine stops: its time is read, and an operator who stood waiting goes on at the same instant. */
export function endMachine(study: WatchInHand, key: string, atMs: number): void {
  const { watch } = study;
  if (!watch.machine) return;
  const { elementIndex, cycle, beganAtMs, clockFlag } = watch.machine;
  study.readings.push(
    newReading(study, key, {
      cycle,
      elementIndex,
      observedMs: atMs - beganAtMs,
      ratingPct: 100,
      excluded: clockFlag === 'slept' ? 'tablet-slept' : null,
      clockFlag,
    }),
  );
  const [next, ...rest] = watch.machineNext;
  watch.machine = next === undefined ? null : { elementIndex: next, cycle, beganAtMs: atMs, clockFlag: '' };
  watch.machineNext = rest;
  if (!watch.machine) endWait(study, cycle, atMs);
}

/** The operator goes on although nobody saw the machine stop. */
export function missMachine(study: WatchInHand, atMs: number): void {
  const { watch } = study;
  const { machine } = watch;
  if (machine) {
    const { cycle, elementIndex, beganAtMs } = machine;
    const missed = [elementIndex, ...watch.machineNext];
    for (const index of missed) {
      study.readings.push(
        newReading(study, `machine#${beganAtMs}#${index}`, {
          cycle,
          elementIndex: index,
          observedMs: null,
          ratingPct: 100,
          excluded: 'missed-break-point',
          isMerged: true,
        }),
      );
    }
  }
  watch.machine = null;
  watch.machineNext = [];
  endWait(study, machine?.cycle ?? watch.cycle, atMs);
}

/** A wait belongs to the cycle whose run it waited for. */
function endWait({ watch, waits }: WatchInHand, cycle: number, atMs: number): void {
  if (!watch.isWaiting) return;
  waits.push({ cycle, observedMs: atMs - watch.beganAtMs - watch.apartMs });
  watch.isWaiting = false;
  watch.beganAtMs = atMs;
  watch.apartMs = 0;
}

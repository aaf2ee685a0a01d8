import type { StudyHeading } from '../records/study-fact';
import { runsOverWork } from './one-lane';
import { startsWith } from './starts-with';
import { cycleOrder, hasTwoLanes } from './study';
import { newReading, outByClock, type WatchInHand } from './watch-in-hand';

/**
 * Which elements the operator's lane holds, and which of the machine's begin with which break point. In a study of
 * two lanes one tap is one event: the break point of the external element before it starts the machine. In a study of
 * one lane only the runs are named that have internal work in them before the tap that ends them.
 */
export function lanesOf({ elements, lanes }: Pick<StudyHeading, 'elements' | 'lanes'>): {
  order: readonly number[];
  after: ReadonlyMap<number, readonly number[]>;
} {
  const all = cycleOrder(elements);
  if (lanes === undefined || !hasTwoLanes(elements)) return { order: all, after: new Map() };
  if (lanes === 1) return { order: all, after: runsOverWork(elements) };
  const order = all.filter((index) => elements[index]?.work !== 'machine');
  const inCycle = all.map((index) => elements[index]!);
  const after = new Map<number, number[]>();
  const first: number[] = [];
  for (const [place, index] of all.entries()) {
    if (elements[index]?.work !== 'machine') continue;
    const starter = all[startsWith(inCycle, place)]!;
    after.set(starter, [...(after.get(starter) ?? []), index]);
    // What the last cycle would have started runs already as the first one begins.
    if (place < all.indexOf(starter)) first.push(index);
  }
  return { order, after: after.set(-1, first) };
}

/** The element with whose end the machine will start next, as a place in the list; null where none starts it. */
export function nextStart(heading: Pick<StudyHeading, 'elements' | 'lanes'>, inHand: number): number | null {
  const { order, after } = lanesOf(heading);
  const place = Math.max(0, order.indexOf(inHand));
  return [...order.slice(place), ...order].find((index) => after.has(index)) ?? null;
}

/** The machine starts. If it still runs, nobody saw it stop: that run has no time. */
export function beginMachines(study: WatchInHand, indexes: readonly number[], atMs: number): void {
  const [elementIndex, ...rest] = indexes;
  if (elementIndex === undefined) return;
  missMachine(study, atMs);
  const { watch } = study;
  watch.machine = { elementIndex, cycle: watch.cycle, beganAtMs: atMs, clockFlag: study.everyFlag };
  watch.machineNext = rest;
}

/** The break point that starts the machine was missed: it runs, nobody knows since when. */
export function beginUnseen(study: WatchInHand, indexes: readonly number[], atMs: number): void {
  if (indexes.length === 0) return;
  beginMachines(study, indexes, atMs);
  const { watch } = study;
  if (watch.machine) watch.machine = { ...watch.machine, isStartUnseen: true };
}

/** The machine stops: its time is read, and an operator who stood waiting goes on at the same instant. */
export function endMachine(study: WatchInHand, key: string, atMs: number): void {
  const { watch } = study;
  if (!watch.machine) return;
  const { elementIndex, cycle, beganAtMs, clockFlag, isStartUnseen = false } = watch.machine;
  study.readings.push(
    newReading(study, key, {
      cycle,
      elementIndex,
      observedMs: isStartUnseen ? null : atMs - beganAtMs,
      ratingPct: 100,
      excluded: isStartUnseen ? 'missed-break-point' : outByClock(clockFlag),
      clockFlag,
      isMerged: isStartUnseen,
    }),
  );
  const [next, ...rest] = watch.machineNext;
  watch.machine =
    next === undefined ? null : { elementIndex: next, cycle, beganAtMs: atMs, clockFlag: study.everyFlag };
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

/**
 * A wait belongs to the cycle whose run it waited for. Where the end of the work before it was not seen, work and
 * wait are one time, which is no reading; the next element begins clean.
 */
function endWait(study: WatchInHand, cycle: number, atMs: number): void {
  const { watch, waits } = study;
  if (!watch.isWaiting) return;
  const ownMs = atMs - watch.beganAtMs - watch.apartMs;
  if (watch.merged.length === 0) waits.push({ cycle, observedMs: ownMs });
  else endMissed(study, ownMs);
  watch.isWaiting = false;
  watch.beganAtMs = atMs;
  watch.apartMs = 0;
}

function endMissed(study: WatchInHand, observedMs: number): void {
  const { watch, readings } = study;
  const last = watch.merged.length - 1;
  for (const [place, missed] of watch.merged.entries()) {
    readings.push(
      newReading(study, `missed#${watch.beganAtMs}#${place}`, {
        ...missed,
        observedMs: place === last ? observedMs : null,
        ratingPct: 100,
        excluded: 'missed-break-point',
        note: place === last ? watch.note : '',
        isMerged: true,
      }),
    );
  }
  watch.merged = [];
  watch.note = '';
  watch.cause = null;
  study.clockFlag = study.everyFlag;
}

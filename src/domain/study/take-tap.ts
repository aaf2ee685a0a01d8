import type { RatedTap, StudyFact } from '../records/study-fact';
import type { ClockFact } from '../records/turn-fact';
import { beginMachines, beginUnseen, endMachine, missMachine } from './machine-lane';
import { beginRun, endRun } from './one-lane';
import { flagClock, newReading, outByClock, type WatchInHand } from './watch-in-hand';

/** Takes one record of an open study to the watch: what it ends becomes a reading, what it begins is in hand. */
export function takeTap(study: WatchInHand, fact: StudyFact | ClockFact, key: string, atMs: number): void {
  const { watch } = study;
  switch (fact.kind) {
    case 'element-ended':
      if (watch.isWaiting) missMachine(study, atMs);
      else endElement(study, fact, key, atMs);
      break;
    case 'machine-ended':
      endMachine(study, key, atMs);
      break;
    case 'element-chosen':
      choose(study, fact.elementNo - 1);
      break;
    case 'in-hand-marked':
      watch.cause = fact.cause;
      break;
    case 'watch-held':
      watch.isHeld = true;
      break;
    case 'watch-went-on':
      watch.isHeld = false;
      watch.beganAtMs = atMs;
      watch.apartMs = 0;
      if (study.heading.lanes === 1) watch.machine = null;
      break;
    case 'break-point-missed':
      watch.merged = [...watch.merged, { cycle: watch.cycle, elementIndex: watch.elementIndex }];
      endRun(study);
      if (study.heading.lanes === 2) beginUnseen(study, study.after.get(watch.elementIndex) ?? [], atMs);
      advance(study);
      if (fact.waits) waitForMachine(study);
      break;
    case 'foreign-began':
      watch.aside = { elementIndex: null, beganAtMs: atMs, note: '' };
      break;
    case 'occasional-began':
      watch.aside = { elementIndex: fact.elementNo - 1, beganAtMs: atMs, note: '' };
      break;
    case 'foreign-ended':
      endAside(study, key, atMs, { ratingPct: 100 }, fact.description);
      break;
    case 'occasional-ended':
      endAside(study, key, atMs, fact, '');
      break;
    case 'in-hand-noted':
      if (watch.aside) watch.aside = { ...watch.aside, note: fact.note };
      else watch.note = fact.note;
      break;
    case 'slept':
    case 'clock-set':
    case 'clock-drifted':
      flagClock(study, fact.kind);
      break;
  }
}

function endElement(study: WatchInHand, { ratingPct, judged }: RatedTap, key: string, atMs: number): void {
  const { watch, readings } = study;
  const { run, isStartUnseen } = endRun(study);
  const isMerged = watch.merged.length > 0 || isStartUnseen;
  const ownMs = atMs - watch.beganAtMs - watch.apartMs;
  const clockFlag = run?.clockFlag ?? study.clockFlag;
  for (const [place, missed] of watch.merged.entries()) {
    readings.push(
      newReading(study, `${key}#${place}`, {
        cycle: missed.cycle,
        elementIndex: missed.elementIndex,
        observedMs: null,
        ratingPct: 100,
        excluded: 'missed-break-point',
        isMerged: true,
      }),
    );
  }
  readings.push(
    newReading(study, key, {
      cycle: watch.cycle,
      elementIndex: watch.elementIndex,
      observedMs: run ? atMs - run.beganAtMs : ownMs,
      ratingPct,
      judged,
      excluded: isMerged ? 'missed-break-point' : (watch.cause ?? outByClock(clockFlag)),
      note: watch.note,
      isMerged,
      clockFlag,
      isBeside: run !== null,
    }),
  );
  if (run) study.waits.push({ cycle: watch.cycle, observedMs: ownMs });
  const ended = watch.elementIndex;
  watch.merged = [];
  watch.beganAtMs = atMs;
  watch.apartMs = 0;
  watch.note = '';
  watch.cause = null;
  study.clockFlag = study.everyFlag;
  const started = study.after.get(ended) ?? [];
  if (study.heading.lanes === 1) {
    beginRun(study, started, atMs);
    advance(study);
    return;
  }
  beginMachines(study, started, atMs);
  advance(study);
  waitForMachine(study);
}

/** In two lanes external work begins once the machine stands. */
function waitForMachine({ heading, watch }: WatchInHand): void {
  const next = heading.elements[watch.elementIndex];
  watch.isWaiting = heading.lanes === 2 && watch.machine !== null && next?.placement === 'external';
}

function endAside(
  study: WatchInHand,
  key: string,
  atMs: number,
  { ratingPct, judged }: RatedTap,
  said: string,
): void {
  const { watch } = study;
  if (!watch.aside) return;
  const { elementIndex, beganAtMs, note } = watch.aside;
  const observedMs = atMs - beganAtMs;
  study.readings.push(
    newReading(study, key, {
      cycle: watch.cycle,
      elementIndex,
      observedMs,
      ratingPct,
      judged,
      excluded: outByClock(study.clockFlag),
      note: said || note,
    }),
  );
  watch.apartMs += observedMs;
  watch.aside = null;
}

/** On to the next element of the method that was not read in this cycle; after the last, to the next cycle. */
function advance(study: WatchInHand): void {
  const { watch, order } = study;
  const place = order.indexOf(watch.elementIndex);
  const next = order.slice(place + 1).find((index) => !isRead(study, index));
  if (next === undefined) watch.cycle += 1;
  watch.elementIndex = next ?? order[0] ?? -1;
}

/** Another element is in hand than the next one. One that was read already in this cycle begins the next cycle. */
function choose(study: WatchInHand, elementIndex: number): void {
  const { watch, order } = study;
  if (!order.includes(elementIndex)) return;
  if (isRead(study, elementIndex)) watch.cycle += 1;
  watch.elementIndex = elementIndex;
  watch.isWaiting = false;
}

function isRead({ readings, watch }: WatchInHand, elementIndex: number): boolean {
  const isHere = (row: { cycle: number; elementNo: number }) =>
    row.cycle === watch.cycle && row.elementNo === elementIndex + 1;
  // From the end: a long study has thousands. The machine's reading of a cycle may come in the next one.
  for (let place = readings.length - 1; place >= 0; place -= 1) {
    const { row } = readings[place]!;
    if (row.cycle < watch.cycle - 1) break;
    if (isHere(row)) return true;
  }
  return watch.merged.some((missed) => missed.cycle === watch.cycle && missed.elementIndex === elementIndex);
}

import { COARSE_STEP_MS } from '../records/coarse-clock';
import { localIso } from '../records/local-iso';
import type { LogRecord } from '../records/log-record';
import { placeOnTimeline } from '../records/place-on-timeline';
import { recordKey } from '../records/record-key';
import type { Stamp } from '../records/stamp';
import type { StudyFact, StudyHeading } from '../records/study-fact';
import type { ClockFact } from '../records/turn-fact';
import { withoutUndone } from '../records/without-undone';
import { SHORTEST_GAP_MS } from '../turn/find-gaps';
import { applyCorrections } from './apply-corrections';
import { foldImportedStudy } from './fold-imported-study';
import { beginMachines, lanesOf } from './machine-lane';
import { internalAfterStop } from './one-lane';
import { idleWatch, type Study, type TapKind, type UndoableTap } from './study';
import { takeTap } from './take-tap';
import { flagClock, type WatchInHand } from './watch-in-hand';

const tapKinds: readonly string[] = [
  'element-ended',
  'break-point-missed',
  'foreign-began',
  'foreign-ended',
  'occasional-began',
  'occasional-ended',
  'element-chosen',
  'in-hand-marked',
  'machine-ended',
  'watch-held',
  'watch-went-on',
] satisfies TapKind[];

/**
 * A study from its records, in order. Pure: the same records give the same study.
 *
 * Continuous timing: a reading is the difference of the running watch at two break points, less what
 * was timed apart in between.
 *
 * @throws {RangeError} foldStudy requires a stream that begins with a study
 */
export function foldStudy(records: readonly LogRecord[]): Study {
  const first = records[0];
  if (!first) throw new RangeError('foldStudy requires at least one record');
  const { fact } = first;
  if (fact.kind === 'study-imported') return foldImportedStudy(records, fact);
  if (fact.kind !== 'study-started') {
    throw new RangeError('foldStudy requires a stream that begins with a study');
  }

  const placed = placeOnTimeline(records);
  const { order, after } = lanesOf(fact);
  const everyFlag = (fact.clockStepMs ?? 0) > COARSE_STEP_MS ? 'coarse' : '';
  const inHand: WatchInHand = {
    heading: fact,
    carried: headOfRows(fact, first.stamp),
    order,
    after,
    behindRun: new Set(fact.lanes === 1 ? internalAfterStop(fact.elements) : []),
    readings: [],
    waits: [],
    everyFlag,
    clockFlag: everyFlag,
    watch: {
      ...idleWatch(records.at(-1)!.stamp),
      cycle: 1,
      elementIndex: order[0] ?? -1,
      lastAtMs: placed.at(-1)!.atMs,
    },
  };
  beginMachines(inHand, after.get(-1) ?? [], 0);
  let run = first.stamp.run;
  let seenAtMs = 0;
  let status: Study['status'] = 'open';
  let undoable: UndoableTap | null = null;
  let ended: Study['ended'] = null;
  const valid = withoutUndone(placed);
  for (const { record, atMs } of valid) {
    if (record.stamp.run !== run && status === 'open')
      flagClock(inHand, goneMs(record, atMs - seenAtMs) < SHORTEST_GAP_MS ? 'reloaded' : 'gone');
    run = record.stamp.run;
    seenAtMs = atMs;
    const told = record.fact as StudyFact | ClockFact;
    if (tapKinds.includes(told.kind)) undoable = undoableTap(inHand, told, recordKey(record));
    if (told.kind === 'study-ended') {
      status = 'ended';
      ended = { stamp: record.stamp, atMs };
    } else takeTap(inHand, told, recordKey(record), atMs);
  }
  return {
    id: recordKey(first),
    title: fact.title,
    status,
    heading: fact,
    method: fact.elements,
    startedAt: first.stamp,
    ended,
    watch: inHand.watch,
    waits: inHand.waits,
    undoable,
    ...applyCorrections(inHand.readings, valid, fact.terms, fact),
  };
}

/** How long the page was gone: since its last mark, or since the record before where it left none. Older releases did not say. */
function goneMs({ fact }: LogRecord, sinceMs: number): number {
  return fact.kind === 'page-opened' ? (fact.goneMs ?? sinceMs) : 0;
}

/** What a tap is about, seen before it is taken. */
function undoableTap({ heading, watch }: WatchInHand, fact: StudyFact | ClockFact, key: string): UndoableTap {
  const inHand = (fact.kind === 'machine-ended' ? watch.machine : watch.aside) ?? watch;
  const isNamed = fact.kind === 'occasional-began' || fact.kind === 'element-chosen';
  const place = isNamed ? fact.elementNo - 1 : inHand.elementIndex;
  const isForeign = fact.kind === 'foreign-began' || fact.kind === 'foreign-ended';
  const element = isForeign || place === null ? '' : (heading.elements[place]?.name ?? '');
  const isWaitEnded = fact.kind === 'element-ended' && watch.isWaiting;
  return { key, kind: isWaitEnded ? 'wait-ended' : (fact.kind as TapKind), element };
}

function headOfRows(heading: StudyHeading, startedAt: Stamp): Record<string, string> {
  return {
    part: heading.partCode,
    operator: heading.operator,
    observer: heading.observer,
    method_revision: String(heading.methodRevision),
    conditions: heading.conditions,
    started_at: localIso(startedAt.wallMs, startedAt.offsetMin),
    time_zone: startedAt.zone,
    note: '',
    ...sizeColumns(heading),
  };
}

/** Sizes of the part stand on every row under the driver's name, so that the table alone says what a time grew with. */
function sizeColumns({ sizes = [] }: StudyHeading): Record<string, string> {
  return Object.fromEntries(sizes.map(({ driver, value }) => [driver, String(value)]));
}

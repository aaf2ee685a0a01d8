import { later } from '../records/later';
import type { LogRecord } from '../records/log-record';
import { type PlacedRecord, placeOnTimeline } from '../records/place-on-timeline';
import { recordKey } from '../records/record-key';
import type { PartInHand } from '../records/turn-fact';
import { withoutUndone } from '../records/without-undone';
import type { enteredTurn } from './entered-turn';
import { findGaps } from './find-gaps';
import { isPersonSaid } from './is-person-said';
import { judgeCycles } from './judge-cycles';
import { withLearning } from './learning-parts';
import { longDoubts } from './long-doubts';
import { netTimes } from './net-times';
import { peopleLine } from './people-line';
import { plannedShift } from './planned-shift';
import { reclassifyLedger } from './reclassify-ledger';
import { withRework } from './rework-times';
import { secondTaps } from './second-taps';
import { shiftEndDoubts } from './shift-end-doubt';
import { spannedBreaks } from './spanned-breaks';
import type { Turn } from './turn';
import { TurnBuilder } from './turn-builder';
import { turnRemarks } from './turn-remarks';
import { wrongParts } from './wrong-part';

/** What the tablet writes by itself: no sign that anybody was at the station. */
const clockKinds = new Set(['slept', 'clock-set', 'clock-drifted', 'page-opened']);

/**
 * A turn from its records, in order. Pure: the same records give the same turn.
 *
 * Every millisecond from the first record to the last is in one span of the ledger: in the cycle of the
 * part that was done with it, in a stoppage under its reason, or unaccounted. A turn that ended stays as
 * long as it was: what is said about it afterwards adds no time, and taps after its end do nothing.
 *
 * Taps that may lie are doubts: each stays out of every mean until a person answers it.
 *
 * @param enter how a turn that was written down afterwards is read: what is in hand at a tablet never is one
 * @throws {RangeError} foldTurn requires a stream that begins with a turn
 * @throws {RangeError} foldTurn requires a turn that was tapped, where `enter` is not given
 */
export function foldTurn(records: readonly LogRecord[], enter?: typeof enteredTurn): Turn {
  const first = records[0];
  if (first?.fact.kind !== 'turn-started') {
    throw new RangeError('foldTurn requires a stream that begins with a turn');
  }
  const placed = placeOnTimeline(records);
  const valid = withoutUndone(placed);
  const remarks = turnRemarks(valid);
  const people = peopleLine(first.fact.person, valid);
  const second = secondTaps(placed, remarks.taps);
  const building = new TurnBuilder(first.fact, people, findGaps(placed), second, remarks);
  const { enteredLater } = first.fact;
  const isWithdrawn = remarks.isWithdrawn && enteredLater !== undefined;
  if (isWithdrawn) building.enter({ parts: [], ledger: [] });
  else if (enteredLater) {
    if (!enter) throw new RangeError('foldTurn requires a turn that was tapped');
    building.enter(enter(first, enteredLater, people));
  } else for (const each of valid) building.take(each);
  const last = building.end ?? placed.at(-1)!;
  building.close(last.atMs);

  const ledger = remarks.reclassified.reduce(reclassifyLedger, building.ledger);
  const { parts } = building;
  const planned = plannedShift(placed);
  const breaks = spannedBreaks(ledger, parts, planned, remarks.workedBreaks);
  const spansBreak = new Set(breaks.map(({ key }) => key));
  const netTimesMs = netTimes(ledger, parts);
  for (const [place, { key }] of parts.entries()) {
    if (remarks.cycles.get(key) === 'first-off')
      netTimesMs[place] = netTimes(ledger, [parts[place]!], 'set-up')[0]!;
  }
  const judged = judgeCycles(parts, netTimesMs, remarks, spansBreak);
  const wrong = wrongParts(judged, partsNamed(valid), remarks.confirmedParts);
  const isWrong = new Set(wrong.flatMap(({ suggestion }) => suggestion.partsDone));
  const asked = judged.map((cycle) =>
    isWrong.has(cycle.key) ? { ...cycle, isCounted: false, doubt: cycle.doubt ?? 'another-part' } : cycle,
  );
  const { person } = people.at(-1)!;
  const lastedMs = isWithdrawn ? 0 : (enteredLater?.lastedMs ?? 0);
  const { cycles, isLearning } = withLearning(asked, valid, person);
  const tapped = building.doubts.filter(
    (doubt) => doubt.kind !== 'same-person' || !isPersonSaid(doubt, people, parts),
  );
  return {
    id: recordKey(first),
    person,
    people,
    planned,
    isLearning,
    countedParts: remarks.countedParts,
    note: remarks.note,
    enteredLater: enteredLater ?? null,
    isWithdrawn,
    startedAt: first.stamp,
    status: building.status,
    inHand: building.inHand,
    cycles: withRework(cycles, building.stoppages, ledger),
    ledger,
    stoppages: building.stoppages,
    gaps: building.gapsTaken,
    changes: building.changes,
    doubts: [
      ...tapped,
      ...breaks,
      ...longDoubts(judged, parts, netTimesMs),
      ...wrong,
      ...shiftEndDoubts({ planned, people }, cycles, remarks),
    ].sort((a, b) => a.toMs - b.toMs),
    confirmedParts: remarks.confirmedParts,
    partBeganAtMs: building.partBeganAtMs,
    partStoppedMs: building.partStoppedMs,
    isPartBegun: building.isPartBegun,
    stepsDone: building.steps.length,
    wantedParts: remarks.wantedParts,
    partGapMs: building.partGapMs,
    undoable: building.undoable,
    lastStamp: enteredLater ? later(first.stamp, lastedMs) : last.record.stamp,
    lastAtMs: enteredLater ? lastedMs : last.atMs,
    lastByHandAt: placed.findLast(({ record }) => !clockKinds.has(record.fact.kind))!.record.stamp,
  };
}

/** The parts that the turn's own records name, each with its newest target there. */
function partsNamed(valid: readonly PlacedRecord[]): PartInHand[] {
  const named = new Map<string, PartInHand>();
  for (const { fact } of valid.map(({ record }) => record))
    if ('partCode' in fact && 'targetMs' in fact) named.set(fact.part, fact);
  return [...named.values()];
}

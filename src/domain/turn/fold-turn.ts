import type { LogRecord } from '../records/log-record';
import { type PlacedRecord, placeOnTimeline } from '../records/place-on-timeline';
import { recordKey } from '../records/record-key';
import type { PartOutcome, TurnFact } from '../records/turn-fact';
import { withoutUndone } from '../records/without-undone';
import type { LedgerCategory } from './ledger-category';
import { type Cycle, type LedgerSpan, NOT_STATED, type Stoppage, type Turn } from './turn';

type StartFact = Extract<TurnFact, { kind: 'turn-started' }>;
type Explanation = Extract<TurnFact, { kind: 'stoppage-explained' }>;
type Judgement = Extract<TurnFact, { kind: 'part-judged' }>;

/** What Undo may take back: the taps that move the turn on. */
const undoableKinds = new Set(['part-done', 'part-changed', 'stopped', 'resumed']);
/** What the tablet writes by itself: no sign that anybody was at the station. */
const clockKinds = new Set(['slept', 'clock-set']);

/**
 * A turn from its records, in order. Pure: the same records give the same turn.
 *
 * Every millisecond from the first record to the last is in one span of the ledger: in the cycle of the
 * part that was done with it, in a stoppage under its reason, or unaccounted. A turn that ended stays as
 * long as it was: what is said about it afterwards adds no time, and taps after its end do nothing.
 *
 * @throws {RangeError} foldTurn requires a stream that begins with a turn
 */
export function foldTurn(records: readonly LogRecord[]): Turn {
  const first = records[0];
  if (first?.fact.kind !== 'turn-started') {
    throw new RangeError('foldTurn requires a stream that begins with a turn');
  }
  const placed = placeOnTimeline(records);
  const last = placed.at(-1)!;
  const valid = withoutUndone(placed);
  const building = new TurnBuilder(first, first.fact, valid);
  for (const each of valid) building.take(each);
  const lastByHand = placed.findLast(({ record }) => !clockKinds.has(record.fact.kind))!;
  return building.turn(last, lastByHand);
}

class TurnBuilder {
  private status: Turn['status'] = 'running';
  private inHand;
  private readonly cycles: Cycle[] = [];
  private readonly stoppages: Stoppage[] = [];
  private readonly ledger: LedgerSpan[] = [];
  /** Running stretches of the part in hand: cycle time once it is done, unaccounted if it never is. */
  private pending: { fromMs: number; toMs: number; stoppage: Stoppage | null }[] = [];
  private partBeganAtMs = 0;
  private partStoppedMs = 0;
  private sinceMs = 0;
  private undoable: Turn['undoable'] = null;
  private end: PlacedRecord | null = null;
  private readonly explanations = new Map<string, Explanation>();
  private readonly judgements = new Map<string, Judgement>();

  constructor(
    private readonly first: LogRecord,
    private readonly start: StartFact,
    records: readonly PlacedRecord[],
  ) {
    const { part, partCode, targetMs } = start;
    this.inHand = { part, partCode, targetMs };
    // What was said about a tap may come long after it, so it is gathered before the taps are read.
    for (const { record } of records) {
      if (record.fact.kind === 'stoppage-explained') this.explanations.set(record.fact.stoppage, record.fact);
      if (record.fact.kind === 'part-judged') this.judgements.set(record.fact.partDone, record.fact);
    }
  }

  take(placed: PlacedRecord): void {
    if (this.status === 'ended') return;
    const { record, atMs } = placed;
    const { fact } = record;
    const key = recordKey(record);
    if (undoableKinds.has(fact.kind)) this.undoable = { key, kind: fact.kind };
    switch (fact.kind) {
      case 'part-done':
        if (this.status === 'stopped') this.resume(atMs);
        this.closeStretch(atMs);
        this.finishPart(record, fact, key, atMs);
        break;
      case 'part-changed': {
        const { part, partCode, targetMs } = fact;
        this.inHand = { part, partCode, targetMs };
        break;
      }
      case 'stopped':
        if (this.status !== 'running') break;
        this.closeStretch(atMs);
        this.status = 'stopped';
        this.stoppages.push(this.explained(key, atMs));
        break;
      case 'resumed':
        if (this.status === 'stopped') this.resume(atMs);
        break;
      case 'turn-ended':
        if (this.status === 'stopped') this.resume(atMs);
        this.closeStretch(atMs);
        this.settle('unaccounted');
        this.status = 'ended';
        this.undoable = null;
        this.end = placed;
        break;
    }
  }

  turn(newest: PlacedRecord, lastByHand: PlacedRecord): Turn {
    const last = this.end ?? newest;
    if (this.status !== 'ended') {
      if (this.status === 'running') this.closeStretch(last.atMs);
      this.settle('cycle');
      const open = this.status === 'stopped' ? this.stoppages.at(-1) : undefined;
      if (open && last.atMs > open.fromMs) this.ledger.push(stoppedSpan(open, last.atMs));
    }
    return {
      id: recordKey(this.first),
      person: this.start.person,
      startedAt: this.first.stamp,
      status: this.status,
      inHand: this.inHand,
      cycles: this.cycles,
      ledger: this.ledger,
      stoppages: this.stoppages,
      partBeganAtMs: this.partBeganAtMs,
      partStoppedMs: this.partStoppedMs,
      undoable: this.undoable,
      lastStamp: last.record.stamp,
      lastAtMs: last.atMs,
      lastByHandAt: lastByHand.record.stamp,
    };
  }

  private finishPart(
    { stamp }: LogRecord,
    { part, partCode, targetMs, touchMs }: Extract<TurnFact, { kind: 'part-done' }>,
    key: string,
    atMs: number,
  ): void {
    const judged = this.judgements.get(key);
    const outcome: PartOutcome = judged?.outcome ?? 'good';
    this.cycles.push({
      key,
      part,
      partCode,
      targetMs,
      doneAt: stamp,
      fromMs: this.partBeganAtMs,
      toMs: atMs,
      // The ledger keeps the time between the taps all the same: it is the operator's, not the part's.
      netMs: touchMs ?? atMs - this.partBeganAtMs - this.partStoppedMs,
      outcome,
      defect: judged?.defect ?? '',
    });
    this.settle('cycle');
    this.partBeganAtMs = atMs;
    this.partStoppedMs = 0;
  }

  private explained(key: string, fromMs: number): Stoppage {
    const why = this.explanations.get(key);
    return {
      key,
      fromMs,
      toMs: null,
      reason: why?.reason ?? NOT_STATED,
      label: why?.label ?? '',
      category: why?.category ?? 'stoppage',
    };
  }

  private resume(atMs: number): void {
    const open = this.stoppages.pop()!;
    const closed = { ...open, toMs: atMs };
    this.stoppages.push(closed);
    this.pending.push({ fromMs: open.fromMs, toMs: atMs, stoppage: closed });
    this.partStoppedMs += atMs - open.fromMs;
    this.sinceMs = atMs;
    this.status = 'running';
  }

  /** Ends the running stretch at this place. */
  private closeStretch(atMs: number): void {
    if (atMs > this.sinceMs) this.pending.push({ fromMs: this.sinceMs, toMs: atMs, stoppage: null });
    this.sinceMs = atMs;
  }

  /** Writes the stretches of the part in hand to the ledger, running ones under the given category. */
  private settle(category: LedgerCategory): void {
    for (const { fromMs, toMs, stoppage } of this.pending) {
      if (stoppage) this.ledger.push(stoppedSpan(stoppage, toMs));
      else this.ledger.push({ category, reason: '', label: '', fromMs, toMs });
    }
    this.pending = [];
  }
}

function stoppedSpan({ category, reason, label, fromMs }: Stoppage, toMs: number): LedgerSpan {
  return { category, reason, label, fromMs, toMs };
}

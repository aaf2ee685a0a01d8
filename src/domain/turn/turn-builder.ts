import type { PlacedRecord } from '../records/place-on-timeline';
import { plainPart } from '../records/plain-part';
import { recordKey } from '../records/record-key';
import type { PartInHand, TurnFact } from '../records/turn-fact';
import type { Doubt } from './doubt';
import { type Gap, SHORTEST_GAP_MS } from './find-gaps';
import { isBegunByItself } from './is-begun-by-itself';
import { isUndoable } from './is-undoable';
import { openStoppage } from './open-stoppage';
import type { PartTapped, Step } from './part-tapped';
import { type PersonSpan, whose } from './people-line';
import { stoppedSpan } from './stopped-span';
import type { LedgerSpan, Stoppage, Stretch, Turn } from './turn';
import { type Piece, turnPiece, withHandsOff, workMs } from './turn-piece';
import type { TurnRemarks } from './turn-remarks';

/** Nobody stays away this long without the question who came back. */
const LONG_GAP_MS = 600_000;
/** A finger that bounces ends no second element, and begins no part. */
const BOUNCE_MS = 300;

/** Walks through the taps of a turn, gaps between them, and writes its ledger and the parts tapped. */
export class TurnBuilder {
  status: Turn['status'] = 'running';
  inHand: PartInHand;
  undoable: Turn['undoable'] = null;
  end: PlacedRecord | null = null;
  partBeganAtMs = 0;
  partStoppedMs = 0;
  partGapMs = 0;
  isPartBegun: boolean;
  steps: Step[] = [];
  readonly parts: PartTapped[] = [];
  readonly stoppages: Stoppage[] = [];
  readonly ledger: LedgerSpan[] = [];
  readonly gapsTaken: Gap[] = [];
  readonly changes: Stretch[] = [];
  readonly doubts: Doubt[] = [];
  private pending: Piece[] = [];
  /** Of a tap for the end of the part that was left out; 0 while there is none. */
  private handsOffAtMs = 0;
  private sinceMs = 0;

  constructor(
    start: PartInHand,
    private readonly people: readonly PersonSpan[],
    private readonly gaps: Gap[],
    private readonly secondTaps: ReadonlyMap<string, number>,
    private readonly remarks: TurnRemarks,
  ) {
    this.inHand = plainPart(start);
    this.isPartBegun = isBegunByItself(this.inHand);
  }

  take(placed: PlacedRecord): void {
    const { record, atMs } = placed;
    const { fact } = record;
    const key = recordKey(record);
    this.takeGaps(atMs);
    if (this.status === 'ended') return;
    const before = this.secondTaps.get(key);
    if (before !== undefined) {
      if (!this.remarks.taps.has(key)) {
        this.doubts.push({ kind: 'second-tap', key, fromMs: before, toMs: atMs, suggestion: 'no-part' });
      }
      if (!isBegunByItself(this.inHand) && this.isPartBegun) this.handsOffAtMs = atMs;
      return;
    }
    if (isUndoable(fact)) this.undoable = { key, kind: fact.kind, atMs };
    switch (fact.kind) {
      case 'part-judged':
        if (this.isMarked(fact.partDone)) {
          this.undoable = { key, kind: fact.kind, atMs, outcome: fact.outcome };
        }
        break;
      case 'part-done':
        this.resume(atMs);
        this.closeStretch(atMs);
        this.finishPart(placed, fact, key);
        break;
      case 'part-begun':
        this.beginByTap(atMs);
        break;
      case 'element-done':
        if (atMs - (this.steps.at(-1)?.toMs ?? this.partBeganAtMs) >= BOUNCE_MS) {
          this.steps.push({ element: fact.element, toMs: atMs });
        }
        break;
      case 'part-changed':
        this.changePart(placed, fact, key);
        break;
      case 'stopped':
        if (this.status !== 'running') break;
        this.closeStretch(atMs);
        this.status = 'stopped';
        this.stoppages.push(openStoppage(this.remarks, key, atMs));
        break;
      case 'resumed':
        this.resume(atMs);
        break;
      case 'turn-ended':
        this.resume(atMs);
        this.closeStretch(atMs);
        this.settle('unaccounted');
        this.status = 'ended';
        this.undoable = null;
        this.end = placed;
        break;
    }
  }

  /** A turn without a tap: it is over, and this is all of it. */
  enter({ parts, ledger }: { parts: readonly PartTapped[]; ledger: readonly LedgerSpan[] }): void {
    this.parts.push(...parts);
    this.ledger.push(...ledger);
    this.status = 'ended';
  }

  /** Writes down what is still open, up to the last record. */
  close(lastAtMs: number): void {
    this.takeGaps(lastAtMs);
    if (this.status === 'ended') return;
    if (this.status === 'running') this.closeStretch(lastAtMs);
    // Where start and end are tapped, what lies after the end is nobody's cycle.
    this.settle(this.isPartBegun ? 'cycle' : 'unaccounted');
    const open = this.status === 'stopped' ? this.stoppages.at(-1) : undefined;
    if (open && lastAtMs > open.fromMs) this.ledger.push(stoppedSpan(open, lastAtMs));
  }

  /** Gaps that lie before this moment. A stoppage simply goes on over one. */
  private takeGaps(untilMs: number): void {
    while (this.gaps.length > 0 && this.gaps[0]!.toMs <= untilMs) {
      const gap = this.gaps.shift()!;
      if (this.status === 'running') this.takeGap(gap);
    }
  }

  private takeGap({ key, why, fromMs: beganMs, toMs }: Gap): void {
    const fromMs = Math.max(beganMs, this.sinceMs);
    this.gapsTaken.push({ key, why, fromMs, toMs });
    this.closeStretch(fromMs);
    const said = this.remarks.gaps.get(key);
    this.pending.push(turnPiece(said, fromMs, toMs));
    this.sinceMs = toMs;
    if (said !== undefined && said !== 'work') this.partStoppedMs += toMs - fromMs;
    if (said === undefined) {
      this.partGapMs += toMs - fromMs;
      this.doubts.push({ kind: 'gap', key, fromMs, toMs, suggestion: why });
    }
    if (
      toMs - fromMs > LONG_GAP_MS &&
      !this.remarks.confirmedPeople.has(key) &&
      this.remarks.person === null
    ) {
      const { person } = whose(this.people, { fromMs, toMs: fromMs });
      this.doubts.push({ kind: 'same-person', key, fromMs, toMs, suggestion: { person } });
    }
  }

  private finishPart(
    { record, atMs }: PlacedRecord,
    done: PartInHand & { readonly touchMs?: number },
    key: string,
  ): void {
    const judged = this.remarks.outcomes.get(key);
    const { person, isShared } = whose(this.people, { fromMs: this.partBeganAtMs, toMs: atMs });
    // Named one by one, as in judgeCycles.
    this.parts.push({
      key,
      part: done.part,
      partCode: done.partCode,
      targetMs: done.targetMs,
      partsPerTap: done.partsPerTap ?? 1,
      doneAt: record.stamp,
      person,
      isShared,
      fromMs: this.partBeganAtMs,
      toMs: atMs,
      // The ledger keeps the time between the taps all the same: it is the operator's, not the part's.
      touchMs: done.touchMs ?? null,
      outcome: judged?.outcome ?? 'good',
      defect: judged?.defect ?? '',
      steps:
        this.steps.length > 0
          ? [...this.steps, { element: this.inHand.elements?.at(-1) ?? '', toMs: atMs }]
          : [],
      isUnbroken: this.pending.length <= 1,
      hasOpenGap: this.partGapMs > 0,
      isEntered: false,
    });
    this.settle(this.remarks.cycles.get(key) === 'first-off' ? 'set-up' : 'cycle');
    this.beginPart(atMs);
  }

  /** What lies between two parts, where start and end are tapped, is nobody's cycle. */
  private beginByTap(atMs: number): void {
    if (this.handsOffAtMs > 0) this.takeUpAgain(atMs);
    if (this.isPartBegun || atMs - this.partBeganAtMs < BOUNCE_MS) return;
    this.resume(atMs);
    this.closeStretch(atMs);
    this.settle('unaccounted');
    this.beginPart(atMs);
    this.isPartBegun = true;
  }

  /** The tap that ended the part was none, but hands were off it from there to this one. */
  private takeUpAgain(atMs: number): void {
    this.resume(atMs);
    this.closeStretch(atMs);
    const workedMs = workMs(this.pending);
    this.pending = withHandsOff(this.pending, this.handsOffAtMs);
    this.partStoppedMs += workedMs - workMs(this.pending);
    this.handsOffAtMs = 0;
  }

  /**
   * The next part begins here, when enough time has passed to be asked about. Until somebody says what that time
   * was, it is unaccounted: a guess would put a set-up into a part's mean.
   */
  private changePart(
    placed: PlacedRecord,
    fact: Extract<TurnFact, { kind: 'part-changed' }>,
    key: string,
  ): void {
    const from = this.inHand;
    const to = plainPart(fact);
    this.inHand = to;
    this.steps = [];
    this.isPartBegun = isBegunByItself(to);
    if (fact.before !== 'asked' || from.part === to.part) return;
    const { atMs } = placed;
    const open = this.status === 'stopped' ? this.stoppages.at(-1)! : null;
    const fromMs = this.partBeganAtMs;
    const workedMs = (open?.fromMs ?? atMs) - fromMs - this.partStoppedMs - this.partGapMs;
    if (workedMs < SHORTEST_GAP_MS) return;
    this.changes.push({ key, fromMs, toMs: atMs });
    const said = this.remarks.changes.get(key);
    if (said === 'next-part') return;
    if (!open) this.closeStretch(atMs);
    if (said === 'part-before') {
      this.finishPart(placed, from, key);
      return;
    }
    if (said === undefined) {
      this.doubts.push({
        kind: 'before-change',
        key,
        fromMs,
        toMs: atMs,
        suggestion: { from, to, workedMs },
      });
    }
    this.settle(said === 'set-up' ? 'set-up' : 'unaccounted');
    this.beginPart(atMs);
  }

  private beginPart(atMs: number): void {
    this.partBeganAtMs = atMs;
    this.partStoppedMs = 0;
    this.partGapMs = 0;
    this.handsOffAtMs = 0;
    this.steps = [];
    this.isPartBegun = isBegunByItself(this.inHand);
  }

  /** The part just done is marked by a tap of its own; the one whose rework has begun, by the tap that began it. */
  private isMarked(partDone: string): boolean {
    const begun = this.status === 'stopped' ? this.stoppages.at(-1)!.ofPart : '';
    return partDone !== begun && partDone.split('/')[0] === this.parts.at(-1)?.key;
  }

  private resume(atMs: number): void {
    if (this.status !== 'stopped') return;
    const open = this.stoppages.pop()!;
    this.stoppages.push({ ...open, toMs: atMs });
    this.pending.push({ isWork: false, span: stoppedSpan(open, atMs) });
    // A stoppage may have begun before the part in hand did.
    this.partStoppedMs += atMs - Math.max(open.fromMs, this.partBeganAtMs);
    this.sinceMs = atMs;
    this.status = 'running';
  }

  /** Ends the running stretch at this place. */
  private closeStretch(atMs: number): void {
    if (atMs > this.sinceMs) this.pending.push(turnPiece('work', this.sinceMs, atMs));
    this.sinceMs = atMs;
  }

  /** Writes the pieces of the part in hand to the ledger, work under the given category. */
  private settle(category: 'cycle' | 'set-up' | 'unaccounted'): void {
    const reason = category === 'set-up' ? category : '';
    for (const { isWork, span } of this.pending) {
      this.ledger.push(isWork ? { ...span, category, reason } : span);
    }
    this.pending = [];
  }
}

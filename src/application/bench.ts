import { batch, type ReadonlySignal, signal } from '@preact/signals';
import { chainOf } from '../domain/records/chain';
import { COARSE_STEP_MS } from '../domain/records/coarse-clock';
import type { Fact, LogRecord } from '../domain/records/log-record';
import { SHOP_STREAM } from '../domain/records/log-record';
import { recordKey } from '../domain/records/record-key';
import type { Stamp } from '../domain/records/stamp';
import { foldShop, withShopRecord } from '../domain/shop/fold-shop';
import type { Shop } from '../domain/shop/shop';
import type { foldStudy } from '../domain/study/fold-study';
import type { Study } from '../domain/study/study';
import { foldTurn } from '../domain/turn/fold-turn';
import type { Turn } from '../domain/turn/turn';
import { type AfterSaving, afterSaving } from './after-saving';
import { ClockWatch } from './clock-watch';
import type { AliveMark } from './ports/alive-mark';
import type { Clock } from './ports/clock';
import type { RecordLog } from './ports/record-log';
import type { ReserveShelf } from './ports/reserve-shelf';
import { type Saving, SavingQueue } from './saving-queue';

/**
 * What is in hand at the tablet: the shop, the open turn, the open study, and the one way in which
 * anything new becomes a record. Verbs take it as their first argument; screens read its signals.
 */
export class Bench {
  private readonly shopNow = signal<Shop>(foldShop([]));
  private readonly turnNow = signal<Turn | null>(null);
  private readonly studyNow = signal<Study | null>(null);
  private readonly changesNow = signal(0);
  private readonly queue: SavingQueue;
  private readonly watch: ClockWatch;
  private readonly afterwards: AfterSaving;
  /** How studies are read: brought by the first one, so that a turn never waits for it. */
  private readStudy: typeof foldStudy | null = null;
  private turnRecords: LogRecord[] = [];
  private studyRecords: LogRecord[] = [];
  /** Something was recorded that what is in hand does not show yet. */
  private isBehind = false;
  /** Another tab writes, or this one has handed over. */
  private isReadOnly = false;
  /** The tablet's last number when this was opened: what comes after it was recorded here. */
  openedAt = 0;
  private sequence = 0;
  private chain = 0;

  private constructor(
    readonly log: RecordLog,
    readonly clock: Clock,
    reserve: ReserveShelf | null,
    private readonly alive: AliveMark | null,
  ) {
    this.queue = new SavingQueue(log, clock, reserve);
    this.watch = new ClockWatch(clock);
    this.afterwards = afterSaving(this.queue.saving, clock);
  }

  /** Reads what is in hand from the log. A log that cannot be read rejects: it is never an empty shop. */
  static async open(
    log: RecordLog,
    clock: Clock,
    reserve: ReserveShelf | null = null,
    isReadOnly = false,
    alive: AliveMark | null = null,
  ): Promise<Bench> {
    const bench = new Bench(log, clock, reserve, alive);
    bench.isReadOnly = isReadOnly;
    // Most days nothing lies there, and the first screen does without the way in.
    const refused =
      reserve && reserve.read().length > 0
        ? await (await import('./take-from-reserve')).takeFromReserve(log, reserve)
        : [];
    const [last, shop, turns, studies] = await Promise.all([
      log.lastRecord(),
      log.readStream(SHOP_STREAM),
      log.readLatestStarts('turn', 10),
      log.readLatestStarts('study', 10),
    ]);
    const end = refused.at(-1) ?? last;
    bench.openedAt = bench.sequence = end?.sequence ?? 0;
    bench.chain = end?.chain ?? 0;
    bench.shopNow.value = foldShop(shop);
    const isTapped = ({ fact }: LogRecord) => fact.kind === 'turn-started' && !fact.enteredLater;
    const turn = turns.find((start) => start.device === log.device && isTapped(start));
    // A turn that another tablet left open goes on there, not here.
    if (turn) await bench.takeUpTurn(recordKey(turn));
    if ([...studies, ...refused].some(({ fact }) => fact.kind === 'study-started')) {
      bench.bringStudies((await import('../domain/study/fold-study')).foldStudy);
    }
    for (const start of studies) {
      const isOwn = start.device === log.device && start.fact.kind === 'study-started';
      if (!isOwn || bench.studyNow.value) continue;
      await bench.takeUpStudy(recordKey(start));
    }
    // In hand all the same, and sent again: a log that is full must not keep anybody from it.
    if (refused.length > 0) bench.queue.add(refused);
    for (const record of refused) bench.take(record);
    bench.noteReturn();
    bench.markAlive();
    bench.watch.start(() => {
      bench.noteClocks();
      bench.markAlive();
    });
    return bench;
  }

  get shop(): ReadonlySignal<Shop> {
    return this.shopNow;
  }
  /** The turn in hand; one that ended stays until it is put away, so that its operator sees it first. */
  get turn(): ReadonlySignal<Turn | null> {
    this.follow();
    return this.turnNow;
  }
  /** The study that is being timed. */
  get study(): ReadonlySignal<Study | null> {
    this.follow();
    return this.studyNow;
  }
  get saving(): ReadonlySignal<Saving> {
    return this.queue.saving;
  }
  /** What was recorded is not saved yet, and is shown nevertheless: nobody waits for it any longer. */
  get isSavingLate(): ReadonlySignal<boolean> {
    return this.afterwards.isLate;
  }
  /** Rises with every record: screens that read the log directly read it again. */
  get changes(): ReadonlySignal<number> {
    return this.changesNow;
  }
  /** Something is being timed: no reload, no update, no sleep. */
  get busy(): boolean {
    const { value: turn } = this.turn;
    return (turn !== null && turn.status !== 'ended') || this.study.value?.status === 'open';
  }

  /**
   * Writes facts of one moment to a stream, or each to one that it begins: all or none. Whoever asks for the turn or
   * the study in hand gets it with them at once; who only looks at it is told once they are saved.
   */
  record(stream: string | null, facts: readonly Fact[], stamp: Stamp = this.clock.now()): LogRecord[] {
    this.noteClocks(stamp);
    return this.write(stream, facts, stamp);
  }

  /** Begins a turn or a study: its first record names the stream. */
  begin(fact: Extract<Fact, { starts: string }>, stamp: Stamp = this.clock.now()): LogRecord {
    const clockStepMs = this.clock.stepMs();
    const isTimed = fact.kind === 'turn-started' || fact.kind === 'study-started';
    const told = isTimed && clockStepMs > COARSE_STEP_MS ? { ...fact, clockStepMs } : fact;
    return this.write(null, [told], stamp)[0]!;
  }

  /** Calls once what was recorded is saved, a moment later at most: what a tap changes on the screen waits for it. */
  afterSaving(next: () => void): void {
    this.afterwards.call(next);
  }

  /** Whoever begins a study brings the way to read it. */
  bringStudies(readStudy: typeof foldStudy): void {
    this.readStudy = readStudy;
  }

  /** Shows a turn that has ended to its operator again. A turn that runs is never put aside for it. */
  async showEndedTurn(stream: string): Promise<void> {
    const records = await this.log.readStream(stream);
    const turn = foldTurn(records);
    if (!this.turn.value && turn.status === 'ended') this.showTurn(records, turn);
  }

  putAwayTurn(): void {
    this.turnRecords = [];
    this.turnNow.value = null;
  }

  putAwayStudy(): void {
    this.studyRecords = [];
    this.studyNow.value = null;
  }

  /** Lets what is on its way be saved, then closes. */
  async finish(): Promise<void> {
    await this.rest();
    this.close();
  }

  /** Lets what is on its way be saved and records nothing more; the log stays open for the bench after it. */
  async rest(): Promise<void> {
    this.isReadOnly = true;
    this.watch.stop();
    await this.queue.idle();
    this.queue.end();
  }

  close(): void {
    this.isReadOnly = true;
    this.watch.stop();
    this.queue.end();
    this.log.close();
  }

  private write(begun: string | null, facts: readonly Fact[], stamp: Stamp): LogRecord[] {
    if (this.isReadOnly) throw new Error('a tab that only reads cannot record');
    const records = facts.map((fact): LogRecord => {
      this.sequence += 1;
      const own = { device: this.log.device, sequence: this.sequence };
      const unchained = { ...own, stream: begun ?? recordKey(own), stamp, fact };
      this.chain = chainOf(unchained, this.chain);
      return { ...unchained, chain: this.chain };
    });
    // The log first, and its answer before the state: the fold reads all of a turn.
    batch(() => {
      this.queue.add(records);
      for (const record of records) this.take(record);
      this.changesNow.value += records.length;
    });
    return records;
  }

  private take(record: LogRecord): void {
    const { fact, stream } = record;
    if (stream === SHOP_STREAM) this.shopNow.value = withShopRecord(this.shopNow.value, record);
    else if (fact.kind === 'turn-started') {
      // What is written down afterwards takes nothing from the turn in hand.
      if (!fact.enteredLater) this.showTurn([record]);
    } else if (fact.kind === 'study-started') this.showStudy([record]);
    else if (stream === this.turnNow.peek()?.id) this.turnRecords = this.behindWith(this.turnRecords, record);
    else if (stream === this.studyNow.peek()?.id)
      this.studyRecords = this.behindWith(this.studyRecords, record);
  }

  private behindWith(records: readonly LogRecord[], record: LogRecord): LogRecord[] {
    this.isBehind = true;
    this.afterSaving(() => this.follow());
    return [...records, record];
  }

  /** Makes the state what the records say. */
  private follow(): void {
    if (!this.isBehind) return;
    this.isBehind = false;
    if (this.turnRecords[0]) this.showTurn(this.turnRecords);
    if (this.studyRecords[0]) this.showStudy(this.studyRecords);
  }

  private showTurn(records: LogRecord[], turn = foldTurn(records)): void {
    this.turnRecords = records;
    this.turnNow.value = turn;
  }

  private showStudy(records: LogRecord[]): void {
    if (!this.readStudy) throw new Error('bringStudies comes before the first study');
    this.studyRecords = records;
    this.studyNow.value = this.readStudy(records);
  }

  private async takeUpTurn(stream: string): Promise<void> {
    const records = await this.log.readStream(stream);
    const turn = foldTurn(records);
    if (turn.status !== 'ended') this.showTurn(records, turn);
  }

  private async takeUpStudy(stream: string): Promise<void> {
    const records = await this.log.readStream(stream);
    if (this.readStudy?.(records).status === 'open') this.showStudy(records);
  }

  /** The page is there again while something is timed: what went on without it is no cycle, and no reading. */
  private noteReturn(): void {
    const [turn, study] = [this.turnNow.value, this.studyNow.value];
    if (turn?.status === 'running') this.noteReturnTo(turn.id, turn.lastStamp);
    if (study?.status === 'open') this.noteReturnTo(study.id, study.watch.lastStamp);
  }

  private noteReturnTo(stream: string, last: Stamp): void {
    const now = this.clock.now();
    // However short it was: without it, all until the next tap would be time in which nobody saw anything.
    if (this.isReadOnly || last.run === now.run) return;
    // A mark from before the last record, or from a clock that was ahead, says nothing.
    const lastSeenMs = this.alive?.read() ?? 0;
    const isTold = lastSeenMs >= last.wallMs && lastSeenMs <= now.wallMs;
    this.write(stream, [{ kind: 'page-opened', ...(isTold && { goneMs: now.wallMs - lastSeenMs }) }], now);
  }

  /** With every heartbeat while something is timed: what comes after the last mark is the time the page was gone. */
  private markAlive(): void {
    if (!this.isReadOnly && this.busy) this.alive?.set(this.clock.now().wallMs);
  }

  /** Writes what the clocks did since they were last compared to whatever is being timed. */
  private noteClocks(stamp: Stamp = this.clock.now()): void {
    if (this.isReadOnly) return;
    const fact = this.watch.compare(stamp);
    if (!fact) return;
    const turn = this.turn.peek();
    const study = this.study.peek();
    if (turn && turn.status !== 'ended') this.write(turn.id, [fact], stamp);
    if (study?.status === 'open') this.write(study.id, [fact], stamp);
  }
}

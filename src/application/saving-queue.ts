import { type ReadonlySignal, signal } from '@preact/signals';
import type { LogRecord } from '../domain/records/log-record';
import type { Clock } from './ports/clock';
import type { RecordLog } from './ports/record-log';
import type { ReserveShelf } from './ports/reserve-shelf';

/** Three truthful states of what was tapped; never one shown for another. */
export interface Saving {
  /** recorded: in memory, on its way. saved: the log holds all of it. not-saved: the log refused. */
  readonly state: 'recorded' | 'saved' | 'not-saved';
  readonly unsaved: number;
  /** What the storage said when it refused; empty otherwise. */
  readonly problem: string;
  /** The unsaved records lie in the reserve: they outlive the page, but not the clearing of its data. */
  readonly isInReserve: boolean;
}

/** A record that is not saved after this long is said to be not saved (from the first tap on it). */
const PATIENCE_MS = 2_000;
const RETRY_MS = 2_000;

/**
 * Sends records to the log in order and says truthfully where they are.
 *
 * Must keep the order: a record is sent only after all before it are saved.
 * Must keep what was refused, and try again, as long as the page lives.
 */
export class SavingQueue {
  private readonly pending: LogRecord[] = [];
  private kept: readonly LogRecord[] = [];
  private sending = false;
  private isOver = false;
  private flight: Promise<void> = Promise.resolve();
  private cancelRetry: (() => void) | null = null;
  private readonly current = signal<Saving>({
    state: 'saved',
    unsaved: 0,
    problem: '',
    isInReserve: false,
  });

  constructor(
    private readonly log: Pick<RecordLog, 'append'>,
    private readonly clock: Pick<Clock, 'after'>,
    private reserve: ReserveShelf | null = null,
  ) {}

  get saving(): ReadonlySignal<Saving> {
    return this.current;
  }

  add(records: readonly LogRecord[]): void {
    this.pending.push(...records);
    const { state, problem } = this.current.peek();
    this.show(state === 'not-saved' ? 'not-saved' : 'recorded', problem);
    this.send();
  }

  /** Resolves when nothing is on its way: everything is saved, or was refused. */
  async idle(): Promise<void> {
    while (this.sending) await this.flight;
  }

  /**
   * Another queue sends from now on, and has the reserve. What is on its way lies there beside what that one puts in,
   * once: taken in after all it is known again, refused it is tried by no one but the next opening.
   */
  end(): void {
    if (this.pending.length > 0) this.keep();
    this.reserve = null;
    this.isOver = true;
  }

  private send(): void {
    if (this.isOver || this.sending || this.pending.length === 0) return;
    this.sending = true;
    this.flight = this.fly();
  }

  private async fly(): Promise<void> {
    this.cancelRetry?.();
    const batch = this.pending.slice();
    const stopWaiting = this.clock.after(PATIENCE_MS, () => this.show('not-saved', 'no answer'));
    let problem = '';
    try {
      await this.log.append(batch);
      this.pending.splice(0, batch.length);
    } catch (error) {
      problem = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
    }
    stopWaiting();
    this.sending = false;
    if (problem) {
      this.show('not-saved', problem);
      this.cancelRetry = this.clock.after(RETRY_MS, () => this.send());
    } else if (this.pending.length > 0) {
      this.show('recorded', '');
      this.send();
    } else {
      this.show('saved', '');
    }
  }

  private show(state: Saving['state'], problem: string): void {
    const wasInReserve = this.current.peek().isInReserve;
    let isInReserve = false;
    if (state === 'not-saved') isInReserve = this.keep();
    else if (wasInReserve) this.keep([]);
    this.current.value = { state, unsaved: this.pending.length, problem, isInReserve };
  }

  /** Puts these in reserve in place of what was put there before; what a tab before this one left there stays. */
  private keep(records: readonly LogRecord[] = this.pending): boolean {
    const { reserve } = this;
    const own = new Set([...this.kept, ...records].map(({ chain }) => chain));
    this.kept = records.slice();
    return reserve?.hold([...reserve.read().filter(({ chain }) => !own.has(chain)), ...records]) ?? false;
  }
}

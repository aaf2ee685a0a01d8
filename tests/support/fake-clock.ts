import type { Clock } from '../../src/application/ports/clock';
import type { Stamp } from '../../src/domain/records/stamp';
import { MORNING_MS } from './records';

/** Clocks that a test moves by hand. They begin on a Monday at 07:00, in run-1. */
export class FakeClock implements Clock {
  run = 'run-1';
  monoMs = 1_000;
  wallMs = MORNING_MS;
  hidden = false;
  step = 0.1;
  zone = 'Europe/Berlin';
  offsetMin = 60;
  private timers: { atMs: number; periodMs: number | null; call: () => void }[] = [];

  now(): Stamp {
    const { run, monoMs, wallMs, zone, offsetMin } = this;
    return { run, monoMs, wallMs, zone, offsetMin };
  }

  stampOf(): Stamp {
    return this.now();
  }

  stepMs(): number {
    return this.step;
  }

  wasHidden(): boolean {
    const was = this.hidden;
    this.hidden = false;
    return was;
  }

  every(periodMs: number, call: () => void): () => void {
    return this.plan({ atMs: this.monoMs + periodMs, periodMs, call });
  }

  after(delayMs: number, call: () => void): () => void {
    return this.plan({ atMs: this.monoMs + delayMs, periodMs: null, call });
  }

  /** Both clocks run on; timers that fall due are called at their time, in order. */
  pass(ms: number): void {
    const endMs = this.monoMs + ms;
    for (;;) {
      const [due] = this.timers.filter(({ atMs }) => atMs <= endMs).sort((a, b) => a.atMs - b.atMs);
      if (!due) break;
      this.moveTo(due.atMs);
      if (due.periodMs === null) this.timers = this.timers.filter((timer) => timer !== due);
      else due.atMs += due.periodMs;
      due.call();
    }
    this.moveTo(endMs);
  }

  /** The tablet sleeps: the wall clock runs on, the monotonic one and all timers stand still. */
  sleep(ms: number): void {
    this.wallMs += ms;
    this.hidden = true;
  }

  /** Somebody sets the wall clock. */
  setBy(ms: number): void {
    this.wallMs += ms;
  }

  /** The page is loaded anew, so much later by the wall clock. */
  reload(afterMs: number): void {
    this.run = `run-${Number(this.run.slice(4)) + 1}`;
    this.monoMs = 50;
    this.wallMs += afterMs;
    this.timers = [];
  }

  private moveTo(monoMs: number): void {
    this.wallMs += monoMs - this.monoMs;
    this.monoMs = monoMs;
  }

  private plan(timer: { atMs: number; periodMs: number | null; call: () => void }): () => void {
    this.timers.push(timer);
    return () => {
      this.timers = this.timers.filter((other) => other !== timer);
    };
  }
}

import type { Stamp } from '../domain/records/stamp';
import type { ClockFact } from '../domain/records/turn-fact';
import type { Clock } from './ports/clock';

const HEARTBEAT_MS = 1_000;
/** Below this two clocks read one after the other are taken to agree: a busy machine pauses between them. */
const AGREE_WITHIN_MS = 1_500;
/** Over so long a time they agree better: a pause is made good at the next look, a small step or a drift is not. */
const WINDOW_MS = 60_000;
/** In a minute: eight times what a time server may slew a clock by (500 ppm, 30 ms), from memory. */
const DRIFT_MS = 250;

/**
 * Compares the two clocks every second and at every record.
 *
 * The wall clock ran ahead of the monotonic one while the page was hidden: the tablet slept, and its
 * monotonic clock stood still (as on Linux, Android, iOS and macOS). It ran ahead or back while the
 * page was in view: somebody set the clock. What is too little to tell at one look is told after a minute: a
 * nap, a small step, or a wall clock that crept away. Daylight saving and another time zone move neither clock; each stamp
 * carries its own zone.
 */
export class ClockWatch {
  private last: Stamp | null = null;
  /** Where the minute began, and whether the page was hidden in it. */
  private window: Stamp | null = null;
  private windowHidden = false;
  /** The farthest they came apart from one look to the next. */
  private jumpMs = 0;
  private cancel: (() => void) | null = null;

  constructor(private readonly clock: Clock) {}

  start(beat: () => void): void {
    this.last = this.clock.now();
    this.window = this.last;
    this.clock.wasHidden();
    this.cancel = this.clock.every(HEARTBEAT_MS, beat);
  }

  stop(): void {
    this.cancel?.();
  }

  /** What happened between the last comparison and this moment, or null when nothing did. */
  compare(now: Stamp): ClockFact | null {
    const { last } = this;
    // A stamp older than the last heartbeat belongs to an input that waited: there is nothing to compare.
    if (!last || now.monoMs < last.monoMs) return null;
    this.last = now;
    const hidden = this.clock.wasHidden();
    const aheadMs = now.wallMs - last.wallMs - (now.monoMs - last.monoMs);
    this.windowHidden ||= hidden;
    if (Math.abs(aheadMs) > Math.abs(this.jumpMs)) this.jumpMs = aheadMs;
    if (Math.abs(aheadMs) < AGREE_WITHIN_MS) return this.closeWindow(now);
    this.beginWindow(now);
    return hidden && aheadMs > 0 ? { kind: 'slept', sleptMs: aheadMs } : { kind: 'clock-set', byMs: aheadMs };
  }

  private closeWindow(now: Stamp): ClockFact | null {
    const { window, windowHidden, jumpMs } = this;
    if (!window || now.monoMs - window.monoMs < WINDOW_MS) return null;
    this.beginWindow(now);
    const aheadMs = now.wallMs - window.wallMs - (now.monoMs - window.monoMs);
    if (Math.abs(aheadMs) <= DRIFT_MS) return null;
    if (windowHidden && aheadMs > 0) return { kind: 'slept', sleptMs: aheadMs };
    // Most of it at one look: a small step. A little at each: a drift.
    const isStep = jumpMs / aheadMs > 0.5;
    return { kind: isStep ? 'clock-set' : 'clock-drifted', byMs: aheadMs };
  }

  private beginWindow(now: Stamp): void {
    this.window = now;
    this.windowHidden = false;
    this.jumpMs = 0;
  }
}

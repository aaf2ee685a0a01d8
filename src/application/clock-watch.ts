import type { Stamp } from '../domain/records/stamp';
import type { ClockFact } from '../domain/records/turn-fact';
import type { Clock } from './ports/clock';

const HEARTBEAT_MS = 1_000;
/** Below this the two clocks are taken to agree: far above their drift in a second, far below a nap. */
const AGREE_WITHIN_MS = 1_500;

/**
 * Compares the two clocks every second and at every record.
 *
 * The wall clock ran ahead of the monotonic one while the page was hidden: the tablet slept, and its
 * monotonic clock stood still (as on Linux, Android, iOS and macOS). It ran ahead or back while the
 * page was in view: somebody set the clock.
 */
export class ClockWatch {
  private last: Stamp | null = null;
  private cancel: (() => void) | null = null;

  constructor(private readonly clock: Clock) {}

  start(beat: () => void): void {
    this.last = this.clock.now();
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
    if (Math.abs(aheadMs) < AGREE_WITHIN_MS) return null;
    return hidden && aheadMs > 0 ? { kind: 'slept', sleptMs: aheadMs } : { kind: 'clock-set', byMs: aheadMs };
  }
}

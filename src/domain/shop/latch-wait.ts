import type { Stamp } from '../records/stamp';
import type { Latch } from './fold-latch';

/** Two slips of the finger cost nothing. */
const FREE_REFUSALS = 2;
const FIRST_WAIT_MS = 30_000;
const LONGEST_WAIT_MS = 900_000;

/**
 * How long to wait before the next PIN is taken, milliseconds: nothing after the first two wrong ones, 30 s
 * after the third, doubled with every further one, up to 15 minutes. All 10,000 PINs of four digits would take
 * 104 days.
 *
 * A wrong PIN from an earlier run of the page is timed by the wall clock, so setting that ends the wait: a clock
 * set back must not keep the supervisor out for a year.
 */
export function latchWaitMs({ refusals, lastRefusal }: Latch, now: Stamp): number {
  if (!lastRefusal || refusals <= FREE_REFUSALS) return 0;
  const waitMs = Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** (refusals - FREE_REFUSALS - 1));
  const isSameRun = lastRefusal.run === now.run;
  const passedMs = isSameRun ? now.monoMs - lastRefusal.monoMs : now.wallMs - lastRefusal.wallMs;
  return passedMs < 0 ? 0 : Math.max(0, waitMs - passedMs);
}

import { earnedMs, isGood } from '../turn/earned-time';
import type { Cycle } from '../turn/turn';

/** Net time beside the targets that the same parts carried. Times in milliseconds. */
export interface AgainstTarget {
  /** Parts that carried a target and count in means. */
  readonly n: number;
  /** Of these, the good ones: they earned their targets. */
  readonly good: number;
  readonly netMs: number;
  /** Earned: of the good ones among them. */
  readonly targetMs: number;
  /** Net time ÷ target time: 1 is at the target, below 1 inside it. */
  readonly share: number;
}

/**
 * Share of the target: the net time of parts over the time their targets allow.
 *
 * Formula: share = Σ net time / Σ earned target, over the parts that carried a target
 *   net time  cycle without stoppages, milliseconds
 *   earned target  of the good parts, as it stood when each was done, milliseconds
 *
 * Each part counts with its own target, so a day of large parts does not read as a slow one and a target
 * that changed in mid-day is used for the parts that carried it. A scrapped part took its time
 * and earned no target, as in the position that the operator sees.
 *
 * A part about which a question is open, or that was set aside, counts on neither side.
 *
 * Null when no part earned a target: none carried one, or all are scrap.
 */
export function againstTarget(cycles: readonly Cycle[]): AgainstTarget | null {
  const measured = cycles.filter(({ targetMs, isCounted }) => isCounted && targetMs !== null && targetMs > 0);
  const netMs = measured.reduce((sum, cycle) => sum + cycle.netMs, 0);
  const targetMs = measured.reduce((sum, cycle) => sum + earnedMs(cycle), 0);
  if (targetMs === 0) return null;
  return {
    n: measured.length,
    good: measured.filter(isGood).length,
    netMs,
    targetMs,
    share: netMs / targetMs,
  };
}

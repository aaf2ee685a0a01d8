import type { Cycle } from './turn';

/** Good at last: good the first time, or good after rework. A scrapped part is a part done and no good one. */
export function isGood({ outcome }: Pick<Cycle, 'outcome'>): boolean {
  return outcome !== 'scrap';
}

/**
 * The target time that a part earned, milliseconds: its own target when it is good, once however often it was
 * reworked; nothing when it is scrap or had no target. Its time counts in any case. The one rule for ahead and behind,
 * for the share of the target, and for earned minutes.
 *
 * Formula: minutes ahead = Σ target of good parts − working time; earned minutes = Σ standard time × accepted parts
 * Source: ANSI/IISE Z94, earned hours.
 */
export function earnedMs(cycle: Pick<Cycle, 'outcome' | 'targetMs'>): number {
  return isGood(cycle) ? (cycle.targetMs ?? 0) : 0;
}

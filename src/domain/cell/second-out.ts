import { branchesOf } from './branches';
import { partTimes } from './cell-cycle';
import type { CellPlace, CellWork } from './cell-work';

/** Kinds of work that are shortened by different means. */
export type WorkKindOfCell = 'outside' | 'inside' | 'machine' | 'other';

const placeOf: Record<WorkKindOfCell, CellPlace> = {
  outside: 'external',
  inside: 'internal',
  machine: 'machine',
  other: 'other',
};

/** What shortening one kind of work gives, whatever it takes now. */
export interface SecondOut {
  /** Of a second taken out of every cycle, what turns up in the time a part: 0 to 1, the rest is waited for. */
  readonly gained: number;
  /** Time a part with none of it left, milliseconds: there a gain ends. */
  readonly leastMs: number;
}

/**
 * What a second less of each kind of work gives; null for a kind that the cell does not have.
 *
 * Formula: gained = (C − C′)/s
 *   C, C′  the cycle now, and with s less of that work in every timed one, the maximum taken cycle by cycle and
 *          occasional work left out
 *   s      a second, or a tenth of the work where that is less
 */
export function secondOut(work: CellWork): Record<WorkKindOfCell, SecondOut | null> {
  const branches = branchesOf(work);
  const { partMs: nowMs } = partTimes(branches, [], 1);
  const of = (kind: WorkKindOfCell): SecondOut | null => {
    const times = branches[placeOf[kind]];
    const meanMs = times.reduce((sum, time) => sum + time, 0) / Math.max(1, times.length);
    if (meanMs === 0) return null;
    const lessMs = Math.min(1_000, meanMs / 10);
    const without = (ms: number) => ({
      ...branches,
      [placeOf[kind]]: times.map((time) => Math.max(0, time - ms)),
    });
    const gained = (nowMs - partTimes(without(lessMs), [], 1).partMs) / lessMs;
    const leastMs = partTimes(without(Number.POSITIVE_INFINITY), work.occasionals, 1).partMs;
    return { gained: Math.min(1, Math.max(0, gained)), leastMs };
  };
  return { outside: of('outside'), inside: of('inside'), machine: of('machine'), other: of('other') };
}

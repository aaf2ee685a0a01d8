import { meanInterval } from '../../statistics/mean-interval';
import { branchesOf } from './branches';
import type { CellWork } from './cell-work';

/** Below so many whole cycles nothing is claimed. */
export const ENOUGH_CYCLES = 5;

/**
 * How near the mean cycle of a study is to the cycle of the work: half-width of its 95 % interval as a share, from the
 * cycles in which every element was read; null below two of them.
 */
export function cyclePrecision(work: CellWork): number | null {
  const { external, internal, machine, other } = branchesOf(work);
  const cycles = work.complete.map((i) =>
    Math.max(external[i]! + Math.max(internal[i]!, machine[i]!), other[i]!),
  );
  if (cycles.length < 2 || !cycles.some((time) => time > 0)) return null;
  return meanInterval(cycles, 0.95).relativeHalfWidth;
}

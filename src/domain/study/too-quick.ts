import { median } from '../../statistics/median';
import { groupBy } from '../group-by';
import type { Reading, Study } from './study';

/** No hand ends an element and the next one within this: the finger bounced, or tapped twice. */
const BOUNCE_MS = 500;
/** Nor does a machine run for less than this: its place was tapped to start it. */
const SHORTEST_RUN_MS = 1_000;
/** Nor is an element over in a quarter of its usual time, where that is within a double tap. */
const DOUBLE_TAP_MS = 1_500;
const SHARE_OF_USUAL = 0.25;
/** Readings that make a usual time. */
const FEWEST = 3;

/**
 * Readings that look like the second tap of a double one: under 0.5 s, a machine's run under 1 s, or under 1.5 s and
 * under a quarter of the element's median. A suggestion to look, never a decision: what is found stays in every mean.
 */
export function tooQuick(readings: readonly Reading[]): Reading[] {
  const timed = readings.filter(
    ({ row }) => row.elementClass === 'repetitive' && row.observedMs !== null && row.excluded === null,
  );
  return [...groupBy(timed, ({ row }) => row.element).values()].flatMap((own) => {
    const times = own.map(({ row }) => row.observedMs!);
    const usualMs = times.length < FEWEST ? 0 : median(times);
    const leastMs = own[0]!.row.work === 'machine' ? SHORTEST_RUN_MS : BOUNCE_MS;
    const limitMs = Math.max(leastMs, Math.min(DOUBLE_TAP_MS, SHARE_OF_USUAL * usualMs));
    // An element that is always this quick is a quick element.
    return usualMs > 0 && usualMs <= leastMs ? [] : own.filter(({ row }) => row.observedMs! < limitMs);
  });
}

/** The last tap of an open study, where it looks like a slip and Undo would take it back. */
export function slipOf({ readings, undoable }: Pick<Study, 'readings' | 'undoable'>): Reading | null {
  const last = readings.at(-1);
  return last && undoable?.key === last.id && tooQuick(readings).includes(last) ? last : null;
}

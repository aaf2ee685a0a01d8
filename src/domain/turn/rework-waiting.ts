import type { Cycle, Turn } from './turn';

/** Parts of a turn marked as rework, and of these the ones whose rework nobody has begun here. */
export interface ReworkMarked {
  readonly marked: readonly Cycle[];
  readonly waiting: readonly Cycle[];
}

/**
 * Which parts are to be made good, and which of them still wait for it. A part waits until a rework is tapped that is
 * tied to it; a rework that was put down to another reason afterwards was none. A turn that was entered later has sums
 * alone, and nothing in it waits.
 */
export function reworkMarked({ cycles, stoppages }: Pick<Turn, 'cycles' | 'stoppages'>): ReworkMarked {
  const marked = cycles.filter(({ outcome }) => outcome === 'rework');
  const begun = new Set(stoppages.map(({ ofPart }) => ofPart));
  return { marked, waiting: marked.filter(({ key, isEntered }) => !isEntered && !begun.has(key)) };
}

import { groupBy } from '../group-by';
import type { TurnSpan } from './turn-span';

/** One person in two turns at once: which of them is right, only a person can say. */
export interface TurnOverlap {
  readonly person: string;
  /** The one that began first. */
  readonly first: TurnSpan;
  readonly second: TurnSpan;
  readonly overlapMs: number;
}

/** Two tablets without a network differ by seconds: signing off here and on there may seem to overlap. */
export const CLOCKS_DIFFER_MS = 60_000;

/**
 * Turns of one person on different tablets that overlap by more than their clocks may differ, in the order of
 * time. Turns of one tablet never overlap: it times one at a time.
 *
 * @param clocksDifferMs overlaps up to this length are left out, milliseconds
 */
export function overlappingTurns(
  spans: readonly TurnSpan[],
  clocksDifferMs: number = CLOCKS_DIFFER_MS,
): TurnOverlap[] {
  const overlaps: TurnOverlap[] = [];
  for (const own of groupBy(spans, ({ person }) => person).values()) {
    const inTime = own.sort((a, b) => a.fromWallMs - b.fromWallMs);
    let running: TurnSpan[] = [];
    for (const second of inTime) {
      running = running.filter(({ toWallMs }) => toWallMs > second.fromWallMs);
      for (const first of running) {
        if (first.device === second.device) continue;
        const overlapMs = Math.min(first.toWallMs, second.toWallMs) - second.fromWallMs;
        if (overlapMs > clocksDifferMs) overlaps.push({ person: second.person, first, second, overlapMs });
      }
      running.push(second);
    }
  }
  return overlaps.sort((a, b) => a.second.fromWallMs - b.second.fromWallMs);
}

import type { Doubt } from './doubt';
import type { Cycle, Turn } from './turn';
import type { TurnRemarks } from './turn-remarks';

/** Whoever takes over does so about the end of a shift, not to the second. */
const ABOUT_MS = 900_000;

/**
 * A turn that goes on after its shift has ended: is it still the same person? Asked with the first part that was
 * begun after it, unless somebody took over about then, or has said.
 */
export function shiftEndDoubts(
  { planned, people }: Pick<Turn, 'planned' | 'people'>,
  cycles: readonly Cycle[],
  remarks: Pick<TurnRemarks, 'confirmedPeople' | 'person'>,
): Doubt[] {
  const { endsAtMs } = planned;
  if (endsAtMs === null || remarks.person !== null) return [];
  const first = cycles.find(({ fromMs }) => fromMs >= endsAtMs);
  if (!first || remarks.confirmedPeople.has(first.key)) return [];
  if (people.some(({ fromMs }) => fromMs > 0 && Math.abs(fromMs - endsAtMs) < ABOUT_MS)) return [];
  const { person } = people.find(({ toMs }) => toMs > endsAtMs)!;
  const suggestion = { person, isShiftEnd: true };
  return [{ kind: 'same-person', key: first.key, fromMs: endsAtMs, toMs: endsAtMs, suggestion }];
}

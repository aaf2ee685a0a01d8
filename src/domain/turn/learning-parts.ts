import type { PlacedRecord } from '../records/place-on-timeline';
import type { Cycle } from './turn';

/**
 * Marks the parts that were made while learning: so many of a person from the moment on at which that was noted. They
 * are parts done like others, and in no mean: who is new to a job is judged by nothing.
 *
 * @param valid records of the turn without those taken back
 * @param personInHand of whom it is told whether the next part is one
 */
export function withLearning(
  cycles: readonly Cycle[],
  valid: readonly PlacedRecord[],
  personInHand: string,
): { cycles: Cycle[]; isLearning: boolean } {
  const left = new Map<string, number>();
  const notes = valid.filter(({ record }) => record.fact.kind === 'learning-noted');
  const takeNotes = (untilMs: number) => {
    while (notes[0] && notes[0].atMs < untilMs) {
      const { fact } = notes.shift()!.record;
      if (fact.kind === 'learning-noted') left.set(fact.person, fact.parts);
    }
  };
  const marked = cycles.map((cycle) => {
    takeNotes(cycle.toMs);
    const remaining = left.get(cycle.person) ?? 0;
    if (remaining <= 0) return cycle;
    left.set(cycle.person, remaining - 1);
    return { ...cycle, isLearning: true, isCounted: false };
  });
  takeNotes(Number.POSITIVE_INFINITY);
  return { cycles: marked, isLearning: (left.get(personInHand) ?? 0) > 0 };
}

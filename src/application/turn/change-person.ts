import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

/** Somebody else goes on at the station from this moment. The part in hand is shared by the two. */
export function changePerson(bench: Bench, person: string, at: Stamp): void {
  const turn = bench.turn.value;
  if (!turn || turn.status === 'ended' || turn.person === person) return;
  bench.record(turn.id, [{ kind: 'person-changed', person }], at);
  const { learners } = bench.shop.peek();
  if (learners.length > 0) import('./plan-learning').then(({ planLearning }) => planLearning(bench));
}

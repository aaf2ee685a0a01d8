import { plainPart } from '../../domain/records/plain-part';
import type { Stamp } from '../../domain/records/stamp';
import type { PartInHand } from '../../domain/records/turn-fact';
import type { Bench } from '../bench';

/** Begins a turn: this person, this part, from this moment. A turn that still runs is not left behind. Planned breaks follow. */
export function startTurn(bench: Bench, person: string, inHand: PartInHand, at?: Stamp): void {
  if (bench.turn.value && bench.turn.value.status !== 'ended') return;
  bench.begin({ kind: 'turn-started', starts: 'turn', person, ...plainPart(inHand) }, at);
  // Breaks are hours away: the first tap does not wait for the way to find them.
  const { calendar, learners } = bench.shop.peek();
  if (learners.length > 0) import('./plan-learning').then(({ planLearning }) => planLearning(bench));
  if (calendar) import('./plan-shift').then(({ planShift }) => planShift(bench));
}

import { shiftPlan } from '../../domain/shop/shift-plan';
import type { Bench } from '../bench';

/**
 * Writes the breaks and the end of the shift, as the shop's calendar has them now, to the turn in hand. The turn
 * keeps them: a calendar that is set tomorrow changes nothing that is past.
 */
export function planShift(bench: Bench): void {
  const turn = bench.turn.peek();
  const { calendar } = bench.shop.peek();
  if (!turn || turn.status === 'ended' || !calendar) return;
  const plan = shiftPlan(calendar, bench.clock.now());
  if (plan.breaks.length > 0 || plan.endsWallMs !== null || turn.planned.breaks.length > 0) {
    bench.record(turn.id, [{ kind: 'shift-planned', ...plan }]);
  }
}

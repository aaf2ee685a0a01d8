import type { LostCost } from '../../../domain/day/lost-cost';
import { roundedShares } from '../rounded-shares';

const MINUTE_MS = 60_000;

/**
 * Lost time and its cost by reason, in tenths of a minute, each adding up. What was absorbed is rounded, and the cost is
 * what it leaves: rounded by itself a cost could come out above the time that it is a part of.
 */
export function roundedCosts(lost: readonly Pick<LostCost, 'lostMs' | 'costMs'>[]): {
  readonly lengths: readonly number[];
  readonly costs: readonly number[];
} {
  const lengths = roundedShares(
    lost.map(({ lostMs }) => lostMs / MINUTE_MS),
    1,
  );
  const absorbed = roundedShares(
    lost.map(({ lostMs, costMs }) => Math.max(0, lostMs - costMs) / MINUTE_MS),
    1,
  );
  const costs = lengths.map((length, place) => Math.max(0, Number((length - absorbed[place]!).toFixed(1))));
  return { lengths, costs };
}

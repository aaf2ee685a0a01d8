import { dayFigures } from './day-figures';
import type { DaySummary } from './summarise-day';

/** Why a good part took more time on one day than on another. */
export interface DayComparison {
  /** Milliseconds per good part on the first day and on the second. */
  readonly perGoodMs: readonly [number, number];
  readonly mixMs: readonly [number, number];
  readonly efficiency: readonly [number, number];
  /** ln of first ÷ second: of time per good part, and what mix and efficiency make of it. */
  readonly logGap: number;
  readonly logMix: number;
  readonly logEfficiency: number;
  /** Share of the gap that the mix explains, 0 to 1 as a rule; null when the days are alike. */
  readonly mixShare: number | null;
}

/** Below this the days are alike: half a percent. */
const ALIKE = 0.005;

/**
 * Two days beside each other: how much of the difference is the parts, and how much the work.
 *
 * Formula: Δln(time per good part) = Δln mix − Δln efficiency
 * Logarithms, so that the two shares add up whichever day comes first. Null when a day has no such figures.
 */
export function compareDays(first: DaySummary, second: DaySummary): DayComparison | null {
  const [a, b] = [dayFigures(first), dayFigures(second)];
  if (a.perGoodMs === null || b.perGoodMs === null || a.mixMs === null || b.mixMs === null) return null;
  if (a.efficiency === null || b.efficiency === null) return null;
  const logGap = Math.log(a.perGoodMs / b.perGoodMs);
  const logMix = Math.log(a.mixMs / b.mixMs);
  return {
    perGoodMs: [a.perGoodMs, b.perGoodMs],
    mixMs: [a.mixMs, b.mixMs],
    efficiency: [a.efficiency, b.efficiency],
    logGap,
    logMix,
    logEfficiency: -Math.log(a.efficiency / b.efficiency),
    mixShare: Math.abs(logGap) < ALIKE ? null : logMix / logGap,
  };
}

import { dayFigures } from '../../../domain/day/day-figures';
import type { DaySummary } from '../../../domain/day/summarise-day';

/** The efficiency of each day that has one, newest first, and the attended time of the middle of those days. */
export function shopEfficiency(days: readonly DaySummary[]): {
  readonly efficiencies: readonly number[];
  readonly dayMs: number;
} {
  const told = days.flatMap((day) => {
    const { efficiency } = dayFigures(day);
    return efficiency === null ? [] : [{ efficiency, attendedMs: day.attendedMs }];
  });
  const lengths = told.map(({ attendedMs }) => attendedMs).sort((a, b) => a - b);
  return {
    efficiencies: told.map(({ efficiency }) => efficiency),
    dayMs: lengths[Math.floor(lengths.length / 2)] ?? 8 * 3_600_000,
  };
}

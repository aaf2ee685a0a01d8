import { dayFigures } from '../../../domain/day/day-figures';
import type { DaySummary } from '../../../domain/day/summarise-day';
import { expectedEfficiency } from '../../../domain/weeks/quote-time';
import { formatNumber } from '../../../i18n/format-number';

/** The efficiency of each day that has one, newest first, and the attended time of the middle of those days. */
export function shopEfficiency(days: readonly DaySummary[]): {
  readonly efficiencies: readonly number[];
  /** Null while fewer days have one than a promise can rest on. */
  readonly mean: number | null;
  /** The mean of the days as they are, however few, in per cent. */
  readonly gave: string;
  readonly dayMs: number;
} {
  const told = days.flatMap((day) => {
    const { efficiency } = dayFigures(day);
    return efficiency === null ? [] : [{ efficiency, attendedMs: day.attendedMs }];
  });
  const lengths = told.map(({ attendedMs }) => attendedMs).sort((a, b) => a - b);
  const efficiencies = told.map(({ efficiency }) => efficiency);
  return {
    efficiencies,
    mean: expectedEfficiency(efficiencies),
    gave: formatNumber(
      (100 * efficiencies.reduce((sum, each) => sum + each, 0)) / (efficiencies.length || 1),
      1,
    ),
    dayMs: lengths[Math.floor(lengths.length / 2)] ?? 8 * 3_600_000,
  };
}

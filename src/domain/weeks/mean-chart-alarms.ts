import type { DaySummary } from '../day/summarise-day';

/** What a chart of means would say, with limits from the spread within the days. */
export interface MeanChartAlarms {
  readonly days: number;
  /** Days that would lie outside. */
  readonly alarms: number;
  /** How far its limits lie from the centre, milliseconds. */
  readonly reachMs: number;
}

/**
 * How often an x̄ chart would cry wolf: its limits know only the spread within a day, and with hundreds of parts
 * a day they are so tight that ordinary differences of mix and crew lie outside.
 *
 * Formula: limits at the mean of all parts ± 3·s/√n
 *   s  pooled deviation of single net cycles within the days, milliseconds
 *   n  mean number of counted parts a day
 * Null below two days with parts, or when parts do not differ.
 */
export function meanChartAlarms(summaries: readonly DaySummary[]): MeanChartAlarms | null {
  const days = summaries.map(netCycles).filter(({ n }) => n > 1);
  if (days.length < 2) return null;
  const n = days.reduce((sum, day) => sum + day.n, 0);
  const centreMs = days.reduce((sum, day) => sum + day.n * day.meanMs, 0) / n;
  const squares = days.reduce((sum, day) => sum + day.squares, 0);
  const deviationMs = Math.sqrt(squares / (n - days.length));
  const reachMs = (3 * deviationMs) / Math.sqrt(n / days.length);
  if (!(reachMs > 0)) return null;
  const alarms = days.filter(({ meanMs }) => Math.abs(meanMs - centreMs) > reachMs).length;
  return { days: days.length, alarms, reachMs };
}

/** All net cycles of a day from the sums of its parts: number, mean, and Σ squared deviations from the mean. */
function netCycles({ parts }: DaySummary): { n: number; meanMs: number; squares: number } {
  const counted = parts.filter((part) => part.counted > 0);
  const n = counted.reduce((sum, part) => sum + part.counted, 0);
  const meanMs = counted.reduce((sum, { netMs }) => sum + netMs, 0) / (n || 1);
  const squares = counted.reduce((sum, part) => {
    const between = part.counted * (part.netMs / part.counted - meanMs) ** 2;
    return sum + (part.counted - 1) * (part.deviationMs ?? 0) ** 2 + between;
  }, 0);
  return { n, meanMs, squares };
}

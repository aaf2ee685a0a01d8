import { quantiles } from '../../statistics/quantiles';
import type { CellRun } from './simulate-cell';

/** Lead times of a run, a value a day, so that two runs can be compared day by day. Times in working milliseconds. */
export interface LeadByDay {
  /** The mean of these is the mean over all parts, and they spread over the days as it does. */
  readonly mean: readonly number[];
  /** The same of the time within which nine parts of ten are free. */
  readonly high: readonly number[];
  /** Parts inside, by Little's law: what was waited on a day over its length. */
  readonly inside: readonly number[];
}

const HIGH = 0.9;
/** Half of the stretch over which the density at a quantile is taken. */
const AROUND = 0.05;

/**
 * Lead times day by day, of the first days of a run. A day that releases more parts counts for more, one that releases none for
 * nothing, and parts of one day may be alike: days are what is compared, never parts.
 *
 * Formula: mean(d) = R + (Σx − R·n)/n̄, high(d) = q + (0.9·n − u)/(n̄·f)
 *   x, n   lead times of the parts released on day d, and their number; n̄ its mean over the days
 *   R, q   mean and 0.9 quantile over all parts of these days
 *   u      parts of the day within q
 *   f      density at q: 0.1/(quantile 0.95 − quantile 0.85); where these are alike, every day has q
 * Source: linearised ratio, Cochran, Sampling Techniques, chapter 6; for the quantile R. R. Bahadur, Annals of
 * Mathematical Statistics 37, 1966 (both from memory).
 *
 * Null where no part was released on these days.
 */
export function leadByDay(
  { leadTimesMs, releasedByDay }: Pick<CellRun, 'leadTimesMs' | 'releasedByDay'>,
  days: number,
  dayMs: number,
): LeadByDay | null {
  const counts = releasedByDay.slice(0, days);
  const parts = counts.reduce((sum, count) => sum + count, 0);
  if (parts === 0) return null;
  const all = leadTimesMs.subarray(0, parts);
  const [below, high, above] = quantiles(all, [HIGH - AROUND, HIGH, HIGH + AROUND]) as [
    number,
    number,
    number,
  ];
  let from = 0;
  const ofDays = counts.map((count) => {
    const own = all.subarray(from, from + count);
    from += count;
    return {
      sum: own.reduce((total, time) => total + time, 0),
      within: own.reduce((total, time) => total + (time <= high ? 1 : 0), 0),
    };
  });
  const perDay = parts / days;
  const meanMs = all.reduce((sum, time) => sum + time, 0) / parts;
  const widthMs = (above - below) / (2 * AROUND);
  return {
    mean: ofDays.map(({ sum }, day) => meanMs + (sum - meanMs * counts[day]!) / perDay),
    high: ofDays.map(({ within }, day) => high + ((HIGH * counts[day]! - within) * widthMs) / perDay),
    inside: ofDays.map(({ sum }) => sum / dayMs),
  };
}

import { median } from '../../statistics/median';
import { dayFigures } from '../day/day-figures';
import type { DaySummary } from '../day/summarise-day';

/** A mix further off than this from the middle one makes a day a hard or an easy one. */
const SAME_MIX = 0.05;

/** Days whose mix lies within 5 % of the middle day's: what the shop makes when nothing special is ordered. */
export function ordinaryDays(summaries: readonly DaySummary[]): DaySummary[] {
  const mixed = summaries.flatMap((day) => {
    const { mixMs } = dayFigures(day);
    return mixMs === null ? [] : [{ day, mixMs }];
  });
  if (mixed.length === 0) return [];
  const middle = median(mixed.map(({ mixMs }) => mixMs));
  return mixed.filter(({ mixMs }) => Math.abs(mixMs / middle - 1) <= SAME_MIX).map(({ day }) => day);
}

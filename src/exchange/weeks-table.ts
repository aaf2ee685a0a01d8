import { addedUp } from '../domain/day/lost-cost';
import type { DaySummary } from '../domain/day/summarise-day';
import { groupBy } from '../domain/group-by';
import { isoWeek } from './iso-week';
import { NOT_FOR_PAY, number, type TypedTable, text, whole } from './typed-table';

const columns = [
  text('week'),
  whole('days'),
  whole('parts_done'),
  whole('good_at_last'),
  whole('good_first_time'),
  whole('scrap'),
  number('first_pass_yield_pct', 2),
  number('attended_min', 2),
  number('earned_min', 2),
  number('efficiency_pct', 2),
  number('mix_min_per_good_part', 4),
  number('attended_min_per_good_part', 4),
  number('lost_min', 2),
  number('lost_output_min', 2),
  whole('set_ups'),
  NOT_FOR_PAY,
];

/**
 * Weeks (ISO 8601), oldest first. attended_min_per_good_part = mix_min_per_good_part ÷ efficiency; a week with a
 * good part without a target has neither mix nor efficiency.
 */
export function weeksTable(days: readonly DaySummary[]): TypedTable {
  const weeks = [...groupBy(days, ({ day }) => isoWeek(day))].sort(([a], [b]) => (a < b ? -1 : 1));
  return {
    name: 'weeks',
    columns,
    rows: weeks.map(([week, own]) => {
      const sum = (of: (day: DaySummary) => number) => own.reduce((total, each) => total + of(each), 0);
      const [done, good] = [sum((day) => day.done), sum((day) => day.good)];
      const [attendedMs, earnedMs] = [sum((day) => day.attendedMs), sum((day) => day.earnedMs)];
      const isMeasured = sum(({ untargeted }) => untargeted) === 0 && good > 0 && attendedMs > 0;
      const lost = addedUp(own);
      return [
        week,
        own.length,
        done,
        good,
        sum(({ firstTime }) => firstTime),
        sum(({ scrap }) => scrap),
        done > 0 ? (100 * sum(({ firstTime }) => firstTime)) / done : null,
        inMinutes(attendedMs),
        inMinutes(earnedMs),
        isMeasured ? (100 * earnedMs) / attendedMs : null,
        isMeasured ? inMinutes(earnedMs / good) : null,
        good > 0 ? inMinutes(attendedMs / good) : null,
        inMinutes(lost.reduce((total, { lostMs }) => total + lostMs, 0)),
        inMinutes(lost.reduce((total, { costMs }) => total + costMs, 0)),
        sum(({ setUps }) => setUps),
      ];
    }),
  };
}

function inMinutes(ms: number): number {
  return ms / 60_000;
}

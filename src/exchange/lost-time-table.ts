import type { LostCost } from '../domain/day/lost-cost';
import type { DaySummary } from '../domain/day/summarise-day';
import { day, NOT_FOR_PAY, number, type TypedTable, text, whole } from './typed-table';

const columns = [
  day('day'),
  text('reason'),
  whole('count'),
  number('lost_min', 2),
  number('cost_in_output_min', 2),
  NOT_FOR_PAY,
];

/**
 * Lost time, one row a day and reason, dearest first. It costs less than it lasts where machine or operator worked on.
 *
 * @param nameOf a reason in words
 */
export function lostTimeTable(days: readonly DaySummary[], nameOf: (lost: LostCost) => string): TypedTable {
  return {
    name: 'lost-time',
    columns,
    rows: days.flatMap(({ day: of, lost }) =>
      lost.map((each) => [of, nameOf(each), each.count, each.lostMs / 60_000, each.costMs / 60_000]),
    ),
  };
}

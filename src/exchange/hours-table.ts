import type { BoardHour } from '../domain/day/hour-board';
import { localIso } from '../domain/records/local-iso';
import { day, NOT_FOR_PAY, number, type TypedTable, text, whole } from './typed-table';

const columns = [
  day('day'),
  text('hour_from'),
  number('planned_min', 2),
  number('earned_min', 2),
  number('difference_so_far_min', 2),
  whole('good_parts'),
  text('most_lost_to'),
  number('most_lost_min', 2),
  NOT_FOR_PAY,
];

/**
 * Days hour by hour in earned minutes. difference_so_far_min = Σ earned − Σ planned since the day's first hour.
 *
 * @param nameOf a reason in words
 */
export function hoursTable(
  days: readonly { readonly day: string; readonly hours: readonly BoardHour[] }[],
  nameOf: (lost: { readonly reason: string; readonly label: string }) => string,
): TypedTable {
  return {
    name: 'hours',
    columns,
    rows: days.flatMap(({ day: of, hours }) =>
      hours.map(({ fromWallMs, offsetMin, plannedMs, earnedMs, goodParts, cause, ...soFar }) => [
        of,
        localIso(fromWallMs, offsetMin),
        plannedMs / 60_000,
        earnedMs / 60_000,
        (soFar.earnedSoFarMs - soFar.plannedSoFarMs) / 60_000,
        goodParts,
        cause && nameOf(cause),
        cause && cause.lostMs / 60_000,
      ]),
    ),
  };
}

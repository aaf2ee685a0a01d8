import type { PartAccount } from '../domain/day/part-account';
import type { DaySummary } from '../domain/day/summarise-day';
import { day, NOT_FOR_PAY, number, type TableRow, type TypedTable, text, whole } from './typed-table';

const columns = [
  day('day'),
  text('part'),
  whole('n'),
  whole('counted'),
  whole('good'),
  whole('rework'),
  whole('scrap'),
  number('mean_s', 3),
  number('sd_s', 3),
  number('shortest_s', 3),
  number('longest_s', 3),
  number('mean_min', 4),
  number('sd_min', 4),
  number('shortest_min', 4),
  number('longest_min', 4),
  number('target_s', 3),
  number('target_min', 4),
  whole('target_changed'),
  number('share_of_target_pct', 1),
  number('gross_mean_min', 4),
  number('attended_min_per_good_part', 4),
  number('first_pass_yield_pct', 2),
  NOT_FOR_PAY,
];

/**
 * Days as a tidy table, one row a day and part: net times without stoppages in seconds (3 decimals) and decimal
 * minutes (4), beside the target.
 *
 * `good` is good the first time, so good, rework and scrap add up to n. The times are those of the `counted` parts:
 * the others wait for an answer, or were set aside. `share_of_target_pct` is the net time of the counted parts that
 * carried a target over what the good ones' targets allow: 100 is at the target. `gross_mean_min` has the
 * stoppages between the taps in it, `attended_min_per_good_part` all attended time up to the part's taps.
 */
export function dayPartsTable(days: readonly DaySummary[]): TypedTable {
  return {
    name: 'day-parts',
    columns,
    rows: days.flatMap(({ day: of, parts }) => parts.map((part) => rowOf(of, part))),
  };
}

function rowOf(of: string, part: PartAccount): TableRow {
  const { n, counted, good, rework, scrap, targetMs } = part;
  const mean = (ms: number) => (counted > 0 ? ms / counted : null);
  const times = [mean(part.netMs), part.deviationMs, part.shortestMs, part.longestMs];
  return [
    of,
    part.partCode,
    n,
    counted,
    good,
    rework,
    scrap,
    ...times.map(inSeconds),
    ...times.map(inMinutes),
    inSeconds(targetMs),
    inMinutes(targetMs),
    part.targetChanged ? 1 : 0,
    part.against && 100 * part.against.share,
    inMinutes(mean(part.grossMs)),
    inMinutes(good + rework > 0 ? part.attendedMs / (good + rework) : null),
    (100 * good) / n,
  ];
}

function inSeconds(ms: number | null): number | null {
  return ms === null ? null : ms / 1_000;
}

function inMinutes(ms: number | null): number | null {
  return ms === null ? null : ms / 60_000;
}

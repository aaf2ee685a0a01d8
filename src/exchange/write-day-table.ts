import type { DayReview } from '../domain/day/review-day';
import { joinTable, type TableForm } from './join-table';
import { spreadsheetSafeText } from './spreadsheet-safe-text';
import { type TableMarks, tableMarks } from './table-profile';

/**
 * The last column is empty: its name says, once and in the header, what the table is not for, and stays with the
 * figures wherever they are copied.
 */
const columns = [
  'day',
  'part',
  'n',
  'counted',
  'good',
  'rework',
  'scrap',
  'mean_s',
  'sd_s',
  'shortest_s',
  'longest_s',
  'mean_min',
  'sd_min',
  'shortest_min',
  'longest_min',
  'target_s',
  'target_min',
  'target_changed',
  'share_of_target_pct',
  'for_planning_not_for_pay_not_a_measure_of_a_person',
] as const;

/**
 * Writes days as a tidy table, one row a day and part: net times without stoppages, in seconds (3
 * decimals) and decimal minutes (4), beside the target.
 *
 * `good` is good the first time, so good, rework and scrap add up to n. The times are those of the
 * `counted` parts: the others wait for an answer, or were set aside. `share_of_target_pct` is the net time
 * of the counted parts that carried a target over what their targets allow: 100 is at the target.
 */
export function writeDayTable(days: readonly DayReview[], form: TableForm = {}): string {
  const { decimalMark } = tableMarks[form.profile ?? 'point'];
  const records = days.flatMap(({ day, parts }) =>
    parts.map((part) => {
      const times = [part.meanMs, part.deviationMs, part.shortestMs, part.longestMs];
      return [
        day,
        spreadsheetSafeText(part.partCode),
        String(part.n),
        String(part.counted),
        String(part.good),
        String(part.rework),
        String(part.scrap),
        ...times.map((ms) => fixed(ms, 1000, 3, decimalMark)),
        ...times.map((ms) => fixed(ms, 60_000, 4, decimalMark)),
        fixed(part.targetMs, 1000, 3, decimalMark),
        fixed(part.targetMs, 60_000, 4, decimalMark),
        part.targetChanged ? '1' : '0',
        fixed(part.against?.share ?? null, 0.01, 1, decimalMark),
        '',
      ];
    }),
  );
  return joinTable([columns, ...records], form);
}

function fixed(
  value: number | null,
  unit: number,
  decimals: number,
  decimalMark: TableMarks['decimalMark'],
): string {
  return value === null ? '' : (value / unit).toFixed(decimals).replace('.', decimalMark);
}

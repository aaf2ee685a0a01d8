import type { CellCycle } from '../../domain/cell/cell-cycle';
import { isShown, moreGood, type RunDifferences } from '../../domain/cell/compare-cells';
import { cell as words } from '../../i18n/en/cell';
import { cellWhatIf as says } from '../../i18n/en/cell-what-if';
import { formatNumber } from '../../i18n/format-number';
import { dayWords } from './day-words';
import { PlainTable } from './plain-table';
import { leadDigits, shownDifference } from './shown-difference';
import type { Runs } from './use-tried-runs';

interface Props {
  /** Until then there is no then. */
  readonly isChanged: boolean;
  readonly cycles: { readonly before: CellCycle; readonly after: CellCycle };
  readonly runs: Runs;
  readonly dayMs: number;
  readonly more: RunDifferences;
}

type Row = keyof typeof says.rows;
type Interval = RunDifferences['lead'];

/**
 * A difference with its interval; in words that none shows where that holds 0, and plain where nothing differs at all.
 *
 * @param scale from the unit of the interval to that of the difference
 */
export function differenceText(by: number, interval: Interval, scale = 1, digits = 1): string {
  if (!interval) return says.notShown;
  const { lower, upper } = interval;
  if (lower === 0 && upper === 0) return signed(by, digits);
  const text = withInterval(by, interval, scale, digits);
  return isShown(interval) ? text : says.isNotShown(text);
}

/** The difference and half of its interval. */
export function withInterval(
  by: number,
  { lower, upper }: NonNullable<Interval>,
  scale = 1,
  digits = 1,
): string {
  return says.interval(signed(by, digits), formatNumber((scale * (upper - lower)) / 2, digits));
}

const signed = (by: number, digits: number) => `${by > 0 ? '+' : ''}${formatNumber(by, digits)}`;

/** Now, then and the difference, of everything that a shop decides by. */
export function ChangeFigures({ isChanged, cycles, runs, dayMs, more }: Props) {
  const { before, after } = { before: runs.before.summary, after: runs.after.summary };
  const minutes = (ms: number) => ms / 60_000;
  const people = ({ otherMs }: CellCycle) => (otherMs > 0 ? 2 : 1);
  const personHours = (cycle: CellCycle) => (people(cycle) * dayMs) / 3_600_000;
  const hours = [personHours(cycles.before), personHours(cycles.after)] as const;
  const rows: readonly (readonly [Row, number, number, number])[] = [
    ['minutes', minutes(cycles.before.partMs), minutes(cycles.after.partMs), 3],
    ['perDay', before.meanGood, after.meanGood, 1],
    ['promise', before.lowGood, after.lowGood, 0],
    ['lead', minutes(before.meanLeadMs), minutes(after.meanLeadMs), leadDigits(before.meanLeadMs)],
    ['leadHigh', minutes(before.highLeadMs), minutes(after.highLeadMs), leadDigits(before.highLeadMs)],
    ['inside', before.meanInside, after.meanInside, 1],
    ['people', people(cycles.before), people(cycles.after), 0],
    ['personHour', before.meanGood / hours[0], after.meanGood / hours[1], 1],
    ['machine', 100 * runs.before.run.machineRuns, 100 * runs.after.run.machineRuns, 0],
  ];
  const unit = (row: Row, text: string) => (row === 'machine' ? words.percent(text) : text);
  const intervals: Partial<Record<Row, readonly [Interval, number?]>> = {
    perDay: [more.perDay],
    lead: [more.lead, minutes(1)],
    leadHigh: [more.leadHigh, minutes(1)],
    inside: [more.inside],
    personHour: [moreGood(runs.before.run, runs.after.run, hours)],
  };
  const difference = (row: Row, by: number, digits: number) => {
    if (row === 'promise' && !isShown(more.lowDay)) return says.notShown;
    const interval = intervals[row];
    if (interval) return differenceText(by, interval[0], interval[1], digits);
    return unit(row, signed(by, digits));
  };
  const shown = rows.filter(([row]) => row !== 'machine' || cycles.before.hasMachine);
  return (
    <PlainTable
      heads={['', says.present, ...(isChanged ? [says.proposed, says.difference] : [])]}
      rows={shown.map(([row, now, then, digits]) => {
        const text = (value: number) => unit(row, formatNumber(value, digits));
        const by = shownDifference(now, then, digits);
        const name = row === 'perDay' ? `${says.rows[row]} (${dayWords(dayMs)})` : says.rows[row];
        return [name, text(now), ...(isChanged ? [text(then), difference(row, by, digits)] : [])];
      })}
    />
  );
}

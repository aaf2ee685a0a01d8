import type { CellCycle } from '../../domain/cell/cell-cycle';
import { isShown, type MoreGood } from '../../domain/cell/compare-cells';
import { cell as words } from '../../i18n/en/cell';
import { cellWhatIf as says } from '../../i18n/en/cell-what-if';
import { formatNumber } from '../../i18n/format-number';
import { PlainTable } from './plain-table';
import { shownDifference } from './shown-difference';
import type { Runs } from './use-tried-runs';

interface Props {
  /** Until then there is no then. */
  readonly isChanged: boolean;
  readonly cycles: { readonly before: CellCycle; readonly after: CellCycle };
  readonly runs: Runs;
  readonly dayMs: number;
  readonly more: MoreGood;
}

/** The difference of good parts a day with its interval, and in words that it is not shown where that holds 0. */
export function differenceText(by: number, { perDay }: MoreGood): string {
  const half = formatNumber((perDay.upper - perDay.lower) / 2, 1);
  const text = says.interval(`${by > 0 ? '+' : ''}${formatNumber(by, 1)}`, half);
  return isShown(perDay) ? text : says.isNotShown(text);
}

/** Now, then and the difference, of everything that a shop decides by. */
export function ChangeFigures({ isChanged, cycles, runs, dayMs, more }: Props) {
  const { before, after } = { before: runs.before.summary, after: runs.after.summary };
  const minutes = (ms: number) => ms / 60_000;
  const people = ({ otherMs }: CellCycle) => (otherMs > 0 ? 2 : 1);
  const personHours = (cycle: CellCycle) => (people(cycle) * dayMs) / 3_600_000;
  const rows: readonly (readonly [keyof typeof says.rows, number, number, number])[] = [
    ['minutes', minutes(cycles.before.partMs), minutes(cycles.after.partMs), 3],
    ['perDay', before.meanGood, after.meanGood, 1],
    ['promise', before.lowGood, after.lowGood, 0],
    ['lead', minutes(before.meanLeadMs), minutes(after.meanLeadMs), 1],
    ['leadHigh', minutes(before.highLeadMs), minutes(after.highLeadMs), 1],
    ['inside', before.meanInside, after.meanInside, 1],
    ['people', people(cycles.before), people(cycles.after), 0],
    [
      'personHour',
      before.meanGood / personHours(cycles.before),
      after.meanGood / personHours(cycles.after),
      1,
    ],
    ['machine', 100 * runs.before.run.machineRuns, 100 * runs.after.run.machineRuns, 0],
  ];
  const unit = (row: string, text: string) => (row === 'machine' ? words.percent(text) : text);
  const difference = (row: string, by: number, digits: number) => {
    const text = `${by > 0 ? '+' : ''}${formatNumber(by, digits)}`;
    if (row === 'promise' && !isShown(more.lowDay)) return says.notShown;
    if (row !== 'perDay') return unit(row, text);
    return differenceText(by, more);
  };
  const shown = rows.filter(([row]) => row !== 'machine' || cycles.before.hasMachine);
  return (
    <PlainTable
      heads={['', says.present, ...(isChanged ? [says.proposed, says.difference] : [])]}
      rows={shown.map(([row, now, then, digits]) => {
        const text = (value: number) => unit(row, formatNumber(value, digits));
        const by = shownDifference(now, then, digits);
        return [says.rows[row], text(now), ...(isChanged ? [text(then), difference(row, by, digits)] : [])];
      })}
    />
  );
}

import { localDay } from '../domain/day/local-day';
import { localIso } from '../domain/records/local-iso';
import type { LedgerCategory } from '../domain/turn/ledger-category';
import { ledgerTotals } from '../domain/turn/ledger-totals';
import type { Turn } from '../domain/turn/turn';
import { day, NOT_FOR_PAY, number, type TypedTable, text, whole } from './typed-table';

const categories: readonly LedgerCategory[] = [
  'cycle',
  'set-up',
  'stoppage',
  'rework',
  'planned-break',
  'called-away',
  'unaccounted',
];

const columns = [
  day('day'),
  text('began_at'),
  text('ended_at'),
  whole('entered_later'),
  number('elapsed_min', 2),
  whole('parts_done'),
  whole('good_at_last'),
  whole('good_first_time'),
  whole('scrap'),
  ...categories.map((category) => number(`${category.replace('-', '_')}_min`, 2)),
  NOT_FOR_PAY,
];

/**
 * Turns, oldest first, with their time by category: the categories add up to the elapsed time, which is no record
 * of hours worked. A turn that is still open has no end. Whose turn it was does not leave the tablet here.
 */
export function turnsTable(turns: readonly Turn[]): TypedTable {
  return {
    name: 'turns',
    columns,
    rows: [...turns]
      .sort((a, b) => a.startedAt.wallMs - b.startedAt.wallMs)
      .map(({ startedAt, status, lastStamp, lastAtMs, enteredLater, cycles, ledger }) => {
        const totals = ledgerTotals(ledger);
        const count = (outcome: string) => cycles.filter((cycle) => cycle.outcome === outcome).length;
        return [
          localDay(startedAt),
          localIso(startedAt.wallMs, startedAt.offsetMin),
          status === 'ended' ? localIso(lastStamp.wallMs, lastStamp.offsetMin) : null,
          enteredLater ? 1 : 0,
          lastAtMs / 60_000,
          cycles.length,
          cycles.length - count('scrap'),
          count('good'),
          count('scrap'),
          ...categories.map((category) => totals[category] / 60_000),
        ];
      }),
  };
}

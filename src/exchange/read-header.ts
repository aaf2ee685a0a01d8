import { type FigureColumn, knownColumn, WATCH_COLUMN } from './readings-columns';
import type { TableCell } from './split-table';
import { textFromSpreadsheet } from './spreadsheet-safe-text';
import type { TableFault } from './table-fault';

export interface TableHeader {
  /** Every column's name, in the order of the file. */
  readonly columns: readonly string[];
  /** Names of columns that the readings table does not know. */
  readonly unknown: readonly string[];
}

const needed: readonly FigureColumn[] = ['study', 'cycle', 'element'];

/** Reads the header row of a readings table. */
export function readHeader(
  cells: readonly TableCell[],
): { ok: true; header: TableHeader } | { ok: false; faults: TableFault[] } {
  const columns = cells.map(({ text }) => knownColumn(text) ?? textFromSpreadsheet(text));
  const faults: TableFault[] = columns.flatMap((column, place) =>
    columns.indexOf(column) < place
      ? [{ code: 'column-twice', line: cells[place]!.line, column: column || place + 1 }]
      : [],
  );
  const missing = needed.filter((column) => !columns.includes(column));
  const hasTime = columns.includes('observed_s') || columns.includes(WATCH_COLUMN);
  for (const column of hasTime ? missing : [...missing, 'observed_s']) {
    faults.push({ code: 'column-missing', line: 1, column });
  }
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, header: { columns, unknown: columns.filter((column) => !knownColumn(column)) } };
}

import { joinTable, type TableForm } from './join-table';
import { spreadsheetSafeText } from './spreadsheet-safe-text';
import { tableMarks } from './table-profile';
import type { TableColumn, TypedTable } from './typed-table';

/** Writes a table as text (RFC 4180): numbers with the decimals of their column, texts that no spreadsheet runs. */
export function writeTable({ columns, rows }: TypedTable, form: TableForm = {}): string {
  const { decimalMark } = tableMarks[form.profile ?? 'point'];
  const cell = (value: string | number | null, { decimals = 0 }: TableColumn): string => {
    if (value === null) return '';
    if (typeof value === 'string') return spreadsheetSafeText(value);
    return value.toFixed(decimals).replace('.', decimalMark);
  };
  const records = rows.map((row) => columns.map((column, place) => cell(row[place] ?? null, column)));
  return joinTable([columns.map(({ name }) => name), ...records], form);
}

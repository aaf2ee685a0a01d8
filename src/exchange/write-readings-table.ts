import type { StudyRow } from '../domain/study/study-row';
import { joinTable, type TableForm } from './join-table';
import { carriedColumns, figureColumns, knownColumn, WATCH_COLUMN } from './readings-columns';
import { spreadsheetSafeText } from './spreadsheet-safe-text';
import { type TableMarks, tableMarks } from './table-profile';
import { writeDecimal } from './write-decimal';

/**
 * Writes rows as a readings table that `readReadingsTable` reads back equal. Carried columns are written
 * where any row has them, known ones first; a row without one of them gets an empty cell.
 *
 * @throws {RangeError} writeReadingsTable requires at least one row
 * @throws {RangeError} writeReadingsTable requires carried columns that hold no figure of the table
 * @throws {RangeError} writeDecimal requires a finite number
 */
export function writeReadingsTable(rows: readonly StudyRow[], form: TableForm = {}): string {
  if (rows.length === 0) throw new RangeError('writeReadingsTable requires at least one row');
  const { decimalMark } = tableMarks[form.profile ?? 'point'];
  const carried = carriedOf(rows);
  const header = [...figureColumns, ...carried.map(spreadsheetSafeText)];
  const records = rows.map((row) => [
    ...figures(row, decimalMark),
    ...carried.map((column) => {
      const text = Object.hasOwn(row.carried, column) ? row.carried[column]! : '';
      return column === WATCH_COLUMN ? text.replace('.', decimalMark) : spreadsheetSafeText(text);
    }),
  ]);
  return joinTable([header, ...records], form);
}

/** In the order of `figureColumns`. */
function figures(row: StudyRow, decimalMark: TableMarks['decimalMark']): string[] {
  const number = (value: number) => writeDecimal(value, decimalMark);
  // Of what is foreign to the job a cell says only what somebody decided: a sum over readings used, or rated, has none of it.
  const said = (text: string, usual: string) =>
    row.elementClass === 'foreign' && text === usual ? '' : text;
  return [
    spreadsheetSafeText(row.study),
    number(row.cycle),
    spreadsheetSafeText(row.element),
    row.observedMs === null ? '' : writeDecimal(row.observedMs, decimalMark, -3),
    number(row.elementNo),
    row.elementClass,
    said(row.work, 'manual'),
    said(row.placement, 'external'),
    number(row.unitsPerOccurrence),
    number(row.partsPerCycle),
    said(number(row.ratingPct), '100'),
    said(row.excluded === null ? '0' : '1', '0'),
    spreadsheetSafeText(row.excluded ?? row.carried.cause ?? ''),
    number(row.allowancePct),
    row.allowanceBasis,
    number(row.machineAllowancePct),
  ];
}

/** The carried columns of a table: known ones in their own order, then the others as they first appear. */
function carriedOf(rows: readonly StudyRow[]): string[] {
  const present = new Set(rows.flatMap(({ carried }) => Object.keys(carried)));
  // A cause beside a reading that is used stands in the cause's own column.
  present.delete('cause');
  const known = carriedColumns.filter((column) => present.has(column));
  const others = [...present].filter((column) => !known.some((one) => one === column));
  if (others.some((column) => knownColumn(column) !== null)) {
    throw new RangeError('writeReadingsTable requires carried columns that hold no figure of the table');
  }
  return [...known, ...others];
}

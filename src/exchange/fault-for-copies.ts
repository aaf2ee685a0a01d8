import { LONGEST_LINE_BYTES } from './backup-lines';
import type { ReadingsTable } from './read-readings-table';
import { carriedColumns } from './readings-columns';
import type { TableFault } from './table-fault';

/** What a record says beside its rows: when, the name of the file, and what holds them together. */
const ROOM_BYTES = 4_096;

/**
 * Why the studies of a table, once recorded, would be refused by the reader of every copy; null where they would not.
 * A study is one record, and a record is one line.
 */
export function faultForCopies({
  rows,
  unknownColumns,
}: Extract<ReadingsTable, { ok: true }>): TableFault | null {
  const column = '__proto__';
  if (unknownColumns.includes(column)) {
    return { code: 'unknown-word', text: column, allowed: carriedColumns, line: 1, column };
  }
  const encoder = new TextEncoder();
  const bytes = new Map<string, number>();
  for (const row of rows) {
    const { study } = row;
    const { length } = encoder.encode(JSON.stringify(row));
    // Beside its rows the study is named once more, and the name is no longer than a row with it.
    const before = bytes.get(study) ?? ROOM_BYTES + length;
    if (before + length >= LONGEST_LINE_BYTES) return { code: 'too-long-for-copy', line: 1, column: 'study' };
    // With its comma.
    bytes.set(study, before + length + 1);
  }
  return null;
}

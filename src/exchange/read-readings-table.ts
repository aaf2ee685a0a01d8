import { groupBy } from '../domain/group-by';
import type { StudyRow } from '../domain/study/study-row';
import { decodeTable } from './decode-table';
import { joinStudyRows } from './join-study-rows';
import { readHeader, type TableHeader } from './read-header';
import { type RowDraft, readReadingRow } from './read-reading-row';
import { splitTable, type TableCell } from './split-table';
import type { TableFault } from './table-fault';
import { detectProfile, type TableProfile, tableMarks } from './table-profile';

export type ReadingsTable =
  | {
      readonly ok: true;
      readonly rows: readonly StudyRow[];
      /** Headers that the readings table does not know; their texts are in each row's `carried`. */
      readonly unknownColumns: readonly string[];
      readonly profile: TableProfile;
    }
  /** Nothing of the file is taken. Faults in the order of the file. */
  | { readonly ok: false; readonly faults: readonly TableFault[] };

/**
 * Reads a readings table, one row a reading: the whole of it, or nothing and every fault found.
 *
 * Give the bytes of a file where there are some: a text has lost what shows that it was none. The profile
 * is told from the header row unless it is chosen.
 */
export function readReadingsTable(
  file: string | Uint8Array,
  { profile: chosen }: { profile?: TableProfile } = {},
): ReadingsTable {
  const decoded = decodeTable(file);
  if (!decoded.ok) return { ok: false, faults: [decoded.fault] };
  const profile = chosen ?? detectProfile(decoded.text);
  const split = splitTable(decoded.text, tableMarks[profile]);
  if (!split.ok) return { ok: false, faults: [split.fault] };

  const [first, ...records] = split.records;
  if (!first || decoded.text.trim() === '') {
    return { ok: false, faults: [{ code: 'empty-file', line: 1, column: 1 }] };
  }
  const read = readHeader(first);
  if (!read.ok) return read;
  const { header } = read;
  const filled = records.filter((record) => !isBlankLine(record));
  if (filled.length === 0) {
    return { ok: false, faults: [{ code: 'no-readings', line: 2, column: header.columns[0]! || 1 }] };
  }

  const faults: TableFault[] = [];
  const drafts: RowDraft[] = [];
  for (const record of filled) {
    const wrongLength = checkLength(record, header);
    if (wrongLength) {
      faults.push(wrongLength);
      continue;
    }
    const draft = readReadingRow(record, header, tableMarks[profile]);
    faults.push(...draft.faults);
    drafts.push(draft);
  }
  const rows = new Map<RowDraft, StudyRow>();
  for (const own of groupBy(drafts, ({ row }) => row.study).values()) {
    // A fault in one row would show again as contradictions in the others.
    if (faults.length > 0 && own.some((draft) => draft.faults.length > 0)) continue;
    const joined = joinStudyRows(own);
    faults.push(...joined.faults);
    for (const [place, draft] of own.entries()) rows.set(draft, joined.rows[place]!);
  }
  if (faults.length > 0) return { ok: false, faults: faults.sort((a, b) => a.line - b.line) };
  return { ok: true, rows: drafts.map((draft) => rows.get(draft)!), unknownColumns: header.unknown, profile };
}

function isBlankLine(record: readonly TableCell[]): boolean {
  return record.length === 1 && record[0]!.text.trim() === '';
}

function checkLength(record: readonly TableCell[], { columns }: TableHeader): TableFault | null {
  const found = record.length;
  const wanted = columns.length;
  if (found === wanted) return null;
  const { line } = record.at(-1)!;
  return found < wanted
    ? { code: 'too-few-cells', found, wanted, line, column: columns[found]! || found + 1 }
    : { code: 'too-many-cells', found, wanted, line: record[wanted]!.line, column: wanted + 1 };
}

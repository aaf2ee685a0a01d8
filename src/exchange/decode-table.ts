import { splitTable } from './split-table';
import type { TableFault } from './table-fault';
import { detectProfile, tableMarks } from './table-profile';

export type DecodedTable =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly fault: TableFault };

const REPLACEMENT = '\uFFFD';

/** The text of a table: UTF-8, with or without a byte order mark. A picture or another character set is refused. */
export function decodeTable(file: string | Uint8Array): DecodedTable {
  if (typeof file === 'string') return { ok: true, text: file.startsWith('\uFEFF') ? file.slice(1) : file };
  try {
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(file) };
  } catch {
    return { ok: false, fault: { code: 'not-text', ...placeOfBrokenBytes(file) } };
  }
}

/** The cell that holds the first bytes which are not UTF-8, found by splitting all that stands before them. */
function placeOfBrokenBytes(file: Uint8Array): Pick<TableFault, 'line' | 'column'> {
  const loose = new TextDecoder('utf-8').decode(file);
  const before = loose.slice(0, loose.indexOf(REPLACEMENT));
  // A letter in place of the broken bytes, so that a cell which begins with them is there too.
  const split = splitTable(`${before}x`, tableMarks[detectProfile(before)]);
  if (!split.ok) return split.fault;
  const last = split.records.at(-1)!;
  const header = split.records.length > 1 ? split.records[0]![last.length - 1]?.text : undefined;
  return { line: last.at(-1)!.line, column: header || last.length };
}

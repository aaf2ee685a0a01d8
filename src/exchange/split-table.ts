import type { TableFault } from './table-fault';
import type { TableMarks } from './table-profile';

/** One cell, unquoted, and the physical line it begins on. */
export interface TableCell {
  readonly text: string;
  readonly line: number;
}

export type SplitTable =
  | { readonly ok: true; readonly records: readonly (readonly TableCell[])[] }
  | { readonly ok: false; readonly fault: TableFault };

/**
 * Splits a table into its cells (RFC 4180), each with its place in the file. Line ends may be CRLF, LF or
 * CR, mixed as hand-edited files mix them. Quoting is strict: a table whose quotes do not close where
 * they should could be read in more ways than one, and a study must not depend on which.
 */
export function splitTable(text: string, { separator }: TableMarks): SplitTable {
  const endOfCell = separator === ',' ? /[,\r\n]/g : /[;\r\n]/g;
  const records: TableCell[][] = [];
  let record: TableCell[] = [];
  let at = 0;
  let line = 1;
  const refuse = (
    code: 'quote-not-closed' | 'quote-inside-cell' | 'text-after-quote' | 'not-text',
  ): SplitTable => ({
    ok: false,
    fault: { code, line, column: records[0]?.[record.length]?.text || record.length + 1 },
  });

  while (at < text.length || record.length > 0) {
    let cell: TableCell;
    if (text[at] === '"') {
      const end = closingQuote(text, at + 1);
      if (end < 0) return refuse('quote-not-closed');
      const after = text[end + 1];
      if (after !== undefined && !`${separator}\r\n`.includes(after)) return refuse('text-after-quote');
      cell = { text: text.slice(at + 1, end).replaceAll('""', '"'), line };
      line += cell.text.match(/\r\n|\r|\n/g)?.length ?? 0;
      at = end + 1;
    } else {
      endOfCell.lastIndex = at;
      const end = endOfCell.exec(text)?.index ?? text.length;
      cell = { text: text.slice(at, end), line };
      if (cell.text.includes('\0')) return refuse('not-text');
      if (cell.text.includes('"')) return refuse('quote-inside-cell');
      at = end;
    }
    record.push(cell);
    if (text[at] === separator) {
      at += 1;
      continue;
    }
    at += text.startsWith('\r\n', at) ? 2 : 1;
    line += 1;
    records.push(record);
    record = [];
  }
  return { ok: true, records };
}

/** Place of the quote that closes a cell; -1 when none does. Two quotes in a row are one of the text. */
function closingQuote(text: string, from: number): number {
  let close = text.indexOf('"', from);
  while (close >= 0 && text[close + 1] === '"') close = text.indexOf('"', close + 2);
  return close;
}

import { type TableProfile, tableMarks } from './table-profile';

export interface TableForm {
  readonly profile?: TableProfile;
  /** A byte order mark in front, without which some spreadsheets break accented letters. */
  readonly byteOrderMark?: boolean;
}

/** Joins cells to a table (RFC 4180): CRLF after every record, quotes only where a cell needs them. */
export function joinTable(
  records: readonly (readonly string[])[],
  { profile = 'point', byteOrderMark = false }: TableForm = {},
): string {
  const { separator } = tableMarks[profile];
  const cell = (text: string) =>
    text.includes(separator) || needsQuotes.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  const lines = records.map((record) => `${record.map(cell).join(separator)}\r\n`);
  return (byteOrderMark ? '\uFEFF' : '') + lines.join('');
}

/** Quotes, control characters, blanks at either end, and texts marked against being run as a formula. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: a control character is kept only inside quotes
const needsQuotes = /["\x00-\x1F]|^[\s']|\s$/;

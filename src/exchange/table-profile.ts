/** Which marks a table uses. `point` is plain RFC 4180; `comma` is what spreadsheets of much of Europe open. */
export type TableProfile = 'point' | 'comma';

export interface TableMarks {
  readonly separator: ',' | ';';
  readonly decimalMark: '.' | ',';
}

/** The separator never equals the decimal mark. */
export const tableMarks: Readonly<Record<TableProfile, TableMarks>> = {
  point: { separator: ',', decimalMark: '.' },
  comma: { separator: ';', decimalMark: ',' },
};

/** A header row is short; a file without line ends is no table, and may be of any size. */
const LONGEST_HEADER = 65_536;

/** The profile of a table, told by the separator of its header row, where no number can mislead. */
export function detectProfile(text: string): TableProfile {
  const header = /^(?:"[^"]*"|[^"\r\n])*/.exec(text.slice(0, LONGEST_HEADER))?.[0] ?? '';
  const outsideQuotes = header.replace(/"[^"]*"/g, '');
  const count = (mark: string) => outsideQuotes.split(mark).length - 1;
  return count(';') > count(',') ? 'comma' : 'point';
}

import type { BackupFault } from '../../application/ports/backup-fault';
import type { TableFault } from '../../exchange/table-fault';
import { backupFaultWords } from '../../i18n/en/backup-faults';
import { tableFaultWords } from '../../i18n/en/table-faults';

/** Of every code a word, or what says it of a fault with this code. */
type WordsOf<Fault extends { readonly code: string }> = {
  [Code in Fault['code']]: string | ((fault: WithCode<Fault, Code>) => string);
};
type WithCode<Fault extends { readonly code: string }, Code> = Fault extends unknown
  ? Code extends Fault['code']
    ? Fault
    : never
  : never;

/**
 * A fault of a table in one plain sentence, on one line: where it is and what is wrong there.
 *
 * @example
 * tableFaultInWords({ code: 'machine-rated', ratingPct: 110, line: 7, column: 'rating_pct' })
 * // => 'Line 7, column rating_pct: a machine element is rated 100 only, and this row says 110.'
 */
export function tableFaultInWords(fault: TableFault): string {
  const { line, column } = fault;
  const place = typeof column === 'string' && !/^\w+$/.test(column) ? quoted(column, 40) : column;
  // Both watch readings are numbers by then.
  const foreign = fault.code === 'watch-backwards' ? [] : ['text', 'first', 'of'];
  return tableFaultWords.at(line, place, said<TableFault>(tableFaultWords.what, fault, foreign, 40));
}

/**
 * Why a backup was refused, in one plain sentence on one line.
 *
 * @example
 * backupFaultInWords({ code: 'cut-short', line: 812 })
 * // => 'The file ends at line 812, before its last line: it was cut short.'
 */
export function backupFaultInWords(fault: BackupFault): string {
  return said<BackupFault>(backupFaultWords, fault, ['problem', 'release', 'kind', 'where', 'device'], 60);
}

/** What comes from the file is put in quotation marks. */
function said<Fault extends { readonly code: string }>(
  words: WordsOf<Fault>,
  fault: Fault,
  foreign: readonly string[],
  longest: number,
): string {
  const word: unknown = words[fault.code as Fault['code']];
  if (typeof word !== 'function') return String(word);
  const shown = Object.entries(fault).map(([name, value]) => [
    name,
    foreign.includes(name) && value !== '' ? quoted(value, longest) : value,
  ]);
  return word(Object.fromEntries(shown));
}

/** Short, and on one line whatever the text holds. */
function quoted(text: string, longest: number): string {
  return JSON.stringify(text.length > longest ? `${text.slice(0, longest)}…` : text);
}

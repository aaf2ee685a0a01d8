import { numberRules, type TableFault } from './table-fault';

/**
 * A fault of a table in one plain sentence, on one line: where it is and what is wrong there.
 *
 * @example
 * describeTableFault({ code: 'machine-rated', ratingPct: 110, line: 7, column: 'rating_pct' })
 * // => 'Line 7, column rating_pct: a machine element is rated 100 only, and this row says 110.'
 */
export function describeTableFault(fault: TableFault): string {
  const { line, column } = fault;
  const place = typeof column === 'string' && !/^\w+$/.test(column) ? quoted(column) : column;
  return `Line ${line}, column ${place}: ${sentence(fault)}.`;
}

function sentence(fault: TableFault): string {
  switch (fault.code) {
    case 'empty-file':
      return 'the file is empty';
    case 'not-text':
      return 'this is not text in UTF-8, so the file is no readings table or was saved in another character set';
    case 'no-readings':
      return 'no reading follows the header row';
    case 'quote-not-closed':
      return 'a cell begins with a quotation mark, and none closes it before the file ends';
    case 'quote-inside-cell':
      return 'a quotation mark stands inside a cell that does not begin with one';
    case 'text-after-quote':
      return 'more text follows the quotation mark that closes the cell';
    case 'column-missing':
      return fault.column === 'observed_s'
        ? 'the header row has no such column, and no watch_s in its place'
        : 'the header row has no such column';
    case 'column-twice':
      return 'the header row has this column twice';
    case 'too-few-cells':
    case 'too-many-cells':
      return `the row has ${fault.found} cells, and the header row has ${fault.wanted}`;
    case 'cell-empty':
      return 'the cell is empty, and every row needs one';
    case 'time-missing':
      return 'the time is missing, and only an excluded row may go without';
    case 'cause-missing':
      return 'a reading is excluded for a cause only, and the cell is empty';
    case 'not-a-number':
      return `${quoted(fault.text)} is not a number with a decimal ${fault.decimalMark === '.' ? 'point' : 'comma'}`;
    case 'out-of-range':
      return `${quoted(fault.text)} is not ${numberRules[fault.rule].words}`;
    case 'unknown-word':
      return `${quoted(fault.text)} is not one of ${fault.allowed.join(', ')}`;
    case 'machine-rated':
      return `a machine element is rated 100 only, and this row says ${fault.ratingPct}`;
    case 'watch-backwards':
      return `the watch runs backwards, from ${fault.before} to ${fault.text}`;
    case 'differs-in-study':
    case 'differs-in-element': {
      const whole = fault.code === 'differs-in-study' ? 'study' : 'element';
      const said = `this row says ${quoted(fault.text)}, and line ${fault.firstLine} ${quoted(fault.first)}`;
      return `${said}, for the same ${whole} ${quoted(fault.of)}`;
    }
  }
}

/** Short, and on one line whatever the text holds. */
function quoted(text: string): string {
  return JSON.stringify(text.length > 40 ? `${text.slice(0, 40)}…` : text);
}

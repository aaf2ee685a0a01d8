import { spoken } from '../spoken';

interface Differs {
  readonly text: string;
  readonly first: string;
  readonly firstLine: number;
  readonly of: string;
}

const rules = {
  count: 'a whole number from 1 to 1000000000',
  time: 'a time from 0 to below 1000000000 s',
  rating: 'a rating above 0 and of at most 1000',
  units: 'a number of work units above 0 and of at most 1000000000',
  allowance: 'a percentage from 0 to 1000',
  shiftAllowance: 'a percentage from 0 to below 100, being a share of the shift',
};

const cells = ({ found, wanted }: { found: number; wanted: number }) =>
  `the row has ${found} cells, and the header row has ${wanted}`;

const differs = ({ text, first, firstLine }: Differs) =>
  `this row says ${text}, and line ${firstLine} ${first}`;

/** Why a table is refused: where, and what is wrong there. Also printed by `npm run recompute`, in English. */
export const tableFaultWords = spoken('tableFaultWords', {
  at: (line: number, column: string | number, what: string) => `Line ${line}, column ${column}: ${what}.`,
  what: {
    'empty-file': 'the file is empty',
    'not-text':
      'this is not text in UTF-8, so the file is no readings table or was saved in another character set',
    'no-readings': 'no reading follows the header row',
    'too-long-for-copy': 'one study of the table is longer than a copy can hold',
    'quote-not-closed': 'a cell begins with a quotation mark, and none closes it before the file ends',
    'quote-inside-cell': 'a quotation mark stands inside a cell that does not begin with one',
    'text-after-quote': 'more text follows the quotation mark that closes the cell',
    'column-missing': ({ column }: { column: string | number }) =>
      column === 'observed_s'
        ? 'the header row has no such column, and no watch_s in its place'
        : 'the header row has no such column',
    'column-twice': 'the header row has this column twice',
    'too-few-cells': cells,
    'too-many-cells': cells,
    'cell-empty': 'the cell is empty, and every row needs one',
    'time-missing': 'the time is missing, and only an excluded row may go without',
    'cause-missing': 'a reading is excluded for a cause only, and the cell is empty',
    'not-a-number': ({ text, decimalMark }: { text: string; decimalMark: string }) =>
      `${text} is not a number with a decimal ${decimalMark === '.' ? 'point' : 'comma'}`,
    'out-of-range': ({ text, rule }: { text: string; rule: keyof typeof rules }) =>
      `${text} is not ${rules[rule]}`,
    'unknown-word': ({ text, allowed }: { text: string; allowed: readonly string[] }) =>
      `${text} is not one of ${allowed.join(', ')}`,
    'machine-rated': ({ ratingPct }: { ratingPct: number }) =>
      `a machine element is rated 100 only, and this row says ${ratingPct}`,
    'watch-backwards': ({ text, before }: { text: string; before: string }) =>
      `the watch runs backwards, from ${before} to ${text}`,
    'differs-in-study': (fault: Differs) => `${differs(fault)}, for the same study ${fault.of}`,
    'differs-in-element': (fault: Differs) => `${differs(fault)}, for the same element ${fault.of}`,
  },
});

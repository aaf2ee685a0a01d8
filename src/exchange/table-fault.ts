/** Why a table was refused: where, and what is wrong there. Words for it are in `i18n`. */
export type TableFault = TableProblem & {
  /** Physical line of the file, from 1: a quoted cell may hold line ends, so it is not the row's number. */
  readonly line: number;
  /** The column's header, or its number from 1 where there is no header. */
  readonly column: string | number;
};

export type TableProblem =
  | { readonly code: 'empty-file' | 'not-text' | 'no-readings' | 'too-long-for-copy' }
  | { readonly code: 'quote-not-closed' | 'quote-inside-cell' | 'text-after-quote' }
  | { readonly code: 'column-missing' | 'column-twice' }
  | { readonly code: 'too-few-cells' | 'too-many-cells'; readonly found: number; readonly wanted: number }
  | { readonly code: 'cell-empty' | 'time-missing' | 'cause-missing' }
  | { readonly code: 'not-a-number'; readonly text: string; readonly decimalMark: '.' | ',' }
  | { readonly code: 'out-of-range'; readonly text: string; readonly rule: NumberRule }
  | { readonly code: 'unknown-word'; readonly text: string; readonly allowed: readonly string[] }
  | { readonly code: 'machine-rated'; readonly ratingPct: number }
  | { readonly code: 'watch-backwards'; readonly text: string; readonly before: string }
  | {
      readonly code: 'differs-in-study' | 'differs-in-element';
      readonly text: string;
      /** What the first row of the study, or of the element, says, and where. */
      readonly first: string;
      readonly firstLine: number;
      /** The study or the element. */
      readonly of: string;
    };

/** What a number must be. */
export type NumberRule = keyof typeof numberRules;

/** Upper limits are far beyond any study: they keep a slip of the keyboard from becoming an infinite figure. */
export const numberRules = {
  count: isCount,
  time: (it: number) => it >= 0 && it < 1e12,
  rating: (it: number) => it > 0 && it <= 1000,
  units: (it: number) => it >= 1e-9 && it <= 1e9,
  allowance: (it: number) => it >= 0 && it <= 1000,
  shiftAllowance: (it: number) => it >= 0 && it < 100,
} as const;

function isCount(value: number): boolean {
  return Number.isInteger(value) && value >= 1 && value <= 1e9;
}

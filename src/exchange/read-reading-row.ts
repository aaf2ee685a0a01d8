import { elementClasses, placements, workKinds } from '../domain/shop/element-definition';
import type { StudyRow } from '../domain/study/study-row';
import { readDecimal } from './read-decimal';
import type { TableHeader } from './read-header';
import { carriedColumns, type FigureColumn, WATCH_COLUMN } from './readings-columns';
import type { TableCell } from './split-table';
import { textFromSpreadsheet } from './spreadsheet-safe-text';
import { type NumberRule, numberRules, type TableFault, type TableProblem } from './table-fault';
import type { TableMarks } from './table-profile';

/** A row as it stands in the file: what only the rows of its study together can say is still open. */
export interface RowDraft {
  readonly line: number;
  readonly cells: Readonly<Record<string, TableCell>>;
  readonly row: StudyRow;
  /** Null where the file leaves the number to the order of first appearance. */
  readonly elementNo: number | null;
  /** The running watch, as the file has it and in milliseconds; null where it was not read off. */
  readonly watch: { readonly text: string; readonly ms: number } | null;
  readonly faults: readonly TableFault[];
}

const bases = ['normal_time', 'shift'] as const;
const yesOrNo = ['0', '1'] as const;

/** Reads one row of a readings table, cell by cell: defaults filled in, every fault named. */
export function readReadingRow(
  record: readonly TableCell[],
  { columns, unknown }: TableHeader,
  { decimalMark }: TableMarks,
): RowDraft {
  const line = record[0]!.line;
  const cells = Object.fromEntries(columns.map((column, place) => [column, record[place]!]));
  const faults: TableFault[] = [];
  const fault = (column: string, problem: TableProblem) =>
    faults.push({ ...problem, line: cells[column]?.line ?? line, column });

  const filled = (column: string) => {
    const text = cells[column]?.text ?? '';
    return text.trim() === '' ? null : text;
  };
  const name = (column: FigureColumn) => {
    const text = filled(column);
    if (text === null) fault(column, { code: 'cell-empty' });
    return textFromSpreadsheet(text ?? '');
  };
  const number = (column: string, rule: NumberRule, power = 0): number | null => {
    const text = filled(column);
    if (text === null) return null;
    const value = readDecimal(text, decimalMark, power);
    if (value === null) fault(column, { code: 'not-a-number', text, decimalMark });
    else if (numberRules[rule](value)) return value;
    else fault(column, { code: 'out-of-range', text, rule });
    return null;
  };
  const word = <Word extends string>(column: FigureColumn, allowed: readonly Word[]): Word => {
    const text = (filled(column) ?? allowed[0]!).trim();
    const found = allowed.find((one) => one === text);
    if (found === undefined) fault(column, { code: 'unknown-word', text, allowed });
    return found ?? allowed[0]!;
  };

  const study = name('study');
  if (filled('cycle') === null) fault('cycle', { code: 'cell-empty' });
  const cycle = number('cycle', 'count') ?? 1;
  const element = name('element');
  const work = word('work', workKinds);
  const ratingPct = number('rating_pct', 'rating') ?? 100;
  if (work === 'machine' && ratingPct !== 100) fault('rating_pct', { code: 'machine-rated', ratingPct });
  const isExcluded = word('excluded', yesOrNo) === '1';
  const cause = textFromSpreadsheet(cells.cause?.text ?? '');
  if (isExcluded && cause.trim() === '') fault('cause', { code: 'cause-missing' });
  const allowanceBasis = word('allowance_basis', bases);
  const allowanceRule = allowanceBasis === 'shift' ? 'shiftAllowance' : 'allowance';
  const watchMs = number(WATCH_COLUMN, 'time', 3);

  const isCarried = (column: string) =>
    unknown.includes(column) || carriedColumns.some((one) => one === column);
  const carried = columns
    .filter(isCarried)
    .map((column): [string, string] => [
      column,
      column === WATCH_COLUMN
        ? cells[column]!.text.replace(decimalMark, '.')
        : textFromSpreadsheet(cells[column]!.text),
    ]);
  // A cause without an exclusion decides nothing; it is kept, as a remark is.
  if (!isExcluded && cause !== '') carried.push(['cause', cause]);

  return {
    line,
    cells,
    elementNo: number('element_no', 'count'),
    watch: watchMs === null ? null : { text: cells[WATCH_COLUMN]!.text.trim(), ms: watchMs },
    row: {
      study,
      cycle,
      element,
      elementNo: 0,
      elementClass: word('element_class', elementClasses),
      work,
      placement: word('placement', placements),
      unitsPerOccurrence: number('units_per_occurrence', 'units') ?? 1,
      partsPerCycle: number('parts_per_cycle', 'count') ?? 1,
      observedMs: number('observed_s', 'time', 3),
      ratingPct,
      excluded: isExcluded ? cause : null,
      allowancePct: number('allowance_pct', allowanceRule) ?? 0,
      allowanceBasis,
      machineAllowancePct: number('machine_allowance_pct', allowanceRule) ?? 0,
      carried: Object.fromEntries(carried),
    },
    faults,
  };
}

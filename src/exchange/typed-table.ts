/** What a column holds: a spreadsheet is told, and no cell is guessed at. */
export interface TableColumn {
  /** Ends with the unit where there is one. */
  readonly name: string;
  readonly kind: 'text' | 'day' | 'whole' | 'number';
  /** Of a number. */
  readonly decimals?: number;
}

/** Cells by column: null is empty. A day is a text such as 2026-03-27. */
export type TableRow = readonly (string | number | null)[];

export interface TypedTable {
  readonly name: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
}

/**
 * The last column of every table of days: it is empty, and its name says what the table is not for. So it stays with
 * the figures wherever they are copied.
 */
export const NOT_FOR_PAY: TableColumn = {
  name: 'for_planning_not_for_pay_not_a_measure_of_a_person',
  kind: 'text',
};

export const text = (name: string): TableColumn => ({ name, kind: 'text' });
export const whole = (name: string): TableColumn => ({ name, kind: 'whole' });
export const number = (name: string, decimals: number): TableColumn => ({ name, kind: 'number', decimals });
export const day = (name: string): TableColumn => ({ name, kind: 'day' });

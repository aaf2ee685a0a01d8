/** Columns of the readings table that hold its figures, in the order in which they are written. */
export const figureColumns = [
  'study',
  'cycle',
  'element',
  'observed_s',
  'element_no',
  'element_class',
  'work',
  'placement',
  'units_per_occurrence',
  'parts_per_cycle',
  'rating_pct',
  'excluded',
  'cause',
  'allowance_pct',
  'allowance_basis',
  'machine_allowance_pct',
] as const;

export type FigureColumn = (typeof figureColumns)[number];

/** The running watch at the break point: the other way to give a time, and carried once it is read. */
export const WATCH_COLUMN = 'watch_s';

/** Columns that say more about a reading and change no figure: carried through unchanged. */
export const carriedColumns = [
  WATCH_COLUMN,
  'part',
  'operator',
  'observer',
  'method_revision',
  'conditions',
  'started_at',
  'time_zone',
  'note',
  'clock_flag',
] as const;

const known: readonly string[] = [...figureColumns, ...carriedColumns];

/** The known column that a header names, blanks around it forgiven; null for one that is not ours. */
export function knownColumn(header: string): string | null {
  const name = header.trim();
  return known.includes(name) ? name : null;
}

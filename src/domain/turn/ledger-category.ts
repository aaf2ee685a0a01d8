/** Where a millisecond of a turn can be: in exactly one of these. */
export type LedgerCategory =
  | 'cycle'
  | 'set-up'
  | 'stoppage'
  | 'rework'
  | 'planned-break'
  | 'called-away'
  | 'unaccounted';

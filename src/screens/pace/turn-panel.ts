/** What stands in the place of the figures for a moment. */
export type TurnPanel =
  | 'figures'
  | 'reason'
  | 'doubt'
  | 'gap'
  | 'outcome'
  | 'change'
  | 'plan'
  | 'undo'
  | 'end';

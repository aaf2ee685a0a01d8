/** Names that a route of the Study screen may have in the place of a study. */
/** A study of this part is prepared. */
export const PREPARE_OF = 'new=';
export const STANDARD_OF = 'standard=';
export const STANDARD_DATA = 'standard-data';
export const PAPER_STUDY = 'paper';

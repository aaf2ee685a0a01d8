import type { moreWords as english } from '../en/more-below';

/** The word for what is still to come under the edge of the screen. */
export const moreWords: typeof english = { more: 'Más abajo' };

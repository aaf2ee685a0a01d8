import { spoken } from '../spoken';

/** The word for what is still to come under the edge of the screen. */
export const moreWords = spoken('moreWords', { more: 'More below' });

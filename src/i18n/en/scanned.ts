import { spoken } from '../spoken';
/** Words about what a scanner typed. */
export const scanned = spoken('scanned', {
  chosen: (said: string) => `Scanned: ${said}`,
  inHand: (code: string) => `Scanned: ${code} is in hand`,
  unknown: (text: string) =>
    `Scanned “${text.length > 20 ? `${text.slice(0, 20)}…` : text}”: no part has this code`,
  tooLong: 'Scanned text is too long to be a part’s code',
});

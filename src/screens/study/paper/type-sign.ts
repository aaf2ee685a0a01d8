import { decimalMark } from '../../../i18n/parse-number';

const LONGEST = 9;

/**
 * A cell once a sign of the pad was typed; an empty sign takes the last one away. Into a cell that is come back to
 * the first sign writes anew, and a second decimal mark is none.
 */
export function typeSign(text: string, sign: string, isComeBackTo: boolean): string {
  if (sign === '') return text.slice(0, -1);
  const kept = isComeBackTo ? '' : text;
  return sign === decimalMark() && kept.includes(sign) ? kept : (kept + sign).slice(0, LONGEST);
}

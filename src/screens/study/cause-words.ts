import { studySheet } from '../../i18n/en/study-sheet';

/** A cause in words: one of those the sheet offers, or the engineer's own. */
export function causeWords(cause: string): string {
  return studySheet.causes[cause]?.words ?? cause;
}

/** The letter that stands beside a reading left out for it. */
export function causeLetter(cause: string): string {
  return studySheet.causes[cause]?.letter ?? studySheet.ownCause.letter;
}

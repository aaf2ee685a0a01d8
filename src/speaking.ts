import { localJotter } from './device/local-jotter';
import { speakLanguage } from './i18n/speak-language';
import { OWN_DATABASE } from './storage/database-names';

/** DO NOT RENAME: tablets have their language under it. */
const PLACE = 'language';
/** One for both shops: the demo speaks as the tablet does. */
const jotter = localJotter(OWN_DATABASE);

let words: Promise<void> | null = null;

/** Brought while the records are being opened, once; nothing is shown before. */
export function wordsSpoken(): Promise<void> {
  words ??= speakLanguage(jotter.read(PLACE), navigator.languages);
  return words;
}

/** The page loads again, because screens hold words that were said already. */
export function speakFromNowOn(language: string): void {
  jotter.write(PLACE, language);
  location.reload();
}

import type { Tongue } from './tongue';

/** Letters that read as English ones and are none, so that a word which no translation reaches stands out. */
const LETTERS = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ';
const DISGUISES = [...'áƀçđéƒĝĥíĵķļṁñóþǫŕšţúṽŵẋýžÁƁÇĐÉƑĜĤÍĴĶĻṀÑÓÞǪŔŠŢÚṼŴẊÝŽ'];
const VOWELS = /[aeiouAEIOU]/;

/** A word of another language is longer: every second vowel stands twice. */
function disguise(text: string): string {
  let vowels = 0;
  return [...text]
    .map((letter) => {
      const place = LETTERS.indexOf(letter);
      if (place < 0) return letter;
      const isLong = VOWELS.test(letter) && vowels++ % 2 === 0;
      return DISGUISES[place]! + (isLong ? DISGUISES[place % 26]! : '');
    })
    .join('');
}

/** What a person or the shop has named comes through as it is; a small word alone is a key of the code. */
function disguiseAround(text: string, given: readonly unknown[]): string {
  const names = given.filter((each): each is string => typeof each === 'string' && /[^a-z]/.test(each));
  if (names.length === 0) return disguise(text);
  const asTheyAre = names
    .sort((a, b) => b.length - a.length)
    .map((name) => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
    .join('|');
  return text
    .split(new RegExp(`((?<![A-Za-z])(?:${asTheyAre})(?![A-Za-z]))`))
    .map((piece, place) => (place % 2 === 1 ? piece : disguise(piece)))
    .join('');
}

function inPseudo(words: unknown, given: readonly unknown[] = []): unknown {
  if (typeof words === 'string') return disguiseAround(words, given);
  if (typeof words === 'function') return (...own: unknown[]) => inPseudo(words(...own), own);
  if (Array.isArray(words)) return words.map((each) => inPseudo(each, given));
  if (typeof words !== 'object' || words === null) return words;
  return Object.fromEntries(Object.entries(words).map(([key, word]) => [key, inPseudo(word, given)]));
}

/**
 * No language, but what shows where one would fail: longer words, written from right to left, and English stands out
 * wherever it is left. Chosen by a test, offered to nobody. Its numbers and days are Hebrew, with decimal points.
 */
export const tongue: Tongue = {
  locale: 'he-IL',
  direction: 'rtl',
  translation: (_name, english) => inPseudo(english) as object,
};

import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const i18n = fileURLToPath(new URL('../../src/i18n', import.meta.url));
const english = import.meta.glob<Record<string, object>>('../../src/i18n/en/*.ts', { eager: true });
const others = {
  de: import.meta.glob<Record<string, object>>('../../src/i18n/de/*.ts', { eager: true }),
  es: import.meta.glob<Record<string, object>>('../../src/i18n/es/*.ts', { eager: true }),
};

/** Every word of an object by its place in it. */
function wordsOf(words: unknown, place = ''): [place: string, word: unknown][] {
  if (typeof words !== 'object' || words === null) return [[place, words]];
  return Object.entries(words).flatMap(([key, word]) => wordsOf(word, place ? `${place}.${key}` : key));
}

const englishWords = wordsByName(english);

function wordsByName(files: Record<string, Record<string, object>>): Map<string, unknown> {
  // A function alone is what its language needs to put words together.
  const words = Object.values(files).flatMap((exported) =>
    Object.entries(exported).filter(([, each]) => typeof each === 'object'),
  );
  return new Map(wordsOf(Object.fromEntries(words)));
}

/** Titles of books are the same in every language, and so are formulas. */
const isAlike = (word: string) => /[=√Σ]/.test(word) || /^Niebel|^International Labour Office/.test(word);

/** They are given a word of the code, such as `less`, where a sample is no such word. */
const withCodes =
  /^(beforeAfterWords\.(old\.)?(size|result)|reviewDayMore\.fair\.(against|beyond|mix)|studyData\.outside|studySheet\.side|studyStandard\.against)$/;
/** Says “one in …” where another says “once in …”. */
const inOtherFigures = /^studyReduce\.frequency\.between$/;

/** Words to try a function with: each number is another one, so that a missing one is seen. */
const samples: readonly (readonly unknown[])[] = [
  [61_000, 72_000, 83_000, 94_000, 105_000, 116_000],
  [2, 3, 4, 5, 6, 7],
  ['Q17', 'Q28', 'Q39', 'Q41', 'Q52', 'Q63'],
  ['17.5', '28.5', '39.5', '41.5', '52.5', '63.5'],
];

/** The figures and given names that a function shows; null where it does not take such arguments. */
function shown(word: unknown, given: readonly unknown[]): Set<string> | null {
  try {
    const text: unknown = (word as (...given: readonly unknown[]) => unknown)(...given);
    if (typeof text !== 'string' || /undefined|NaN|\[object/.test(text)) return null;
    return new Set(text.match(/Q\d\d|\d+(?:[.:,]\d+)*/g) ?? []);
  } catch {
    return null;
  }
}

describe('the words of a language', () => {
  it.each(Object.keys(others))('%s: stand in the same files as the English ones', (language) => {
    const missing = readdirSync(path.join(i18n, 'en')).filter(
      (file) => !readdirSync(path.join(i18n, language)).includes(file),
    );
    expect(missing).toEqual([]);
  });

  it.each(Object.entries(others))('%s: have the same names, none more and none fewer', (_language, files) => {
    expect([...wordsByName(files).keys()].sort()).toEqual([...englishWords.keys()].sort());
  });

  it.each(Object.entries(others))('%s: are none of them empty or of another kind', (_language, files) => {
    const faulty = [...wordsByName(files)].filter(
      ([place, word]) =>
        typeof word !== typeof englishWords.get(place) || (word === '' && englishWords.get(place) !== ''),
    );
    expect(faulty).toEqual([]);
  });

  it.each(Object.entries(others))('%s: are not the English ones', (_language, files) => {
    const same = [...wordsByName(files)].filter(
      ([, word]) => typeof word === 'string' && word.length > 12 && [...englishWords.values()].includes(word),
    );
    expect(same.filter(([, word]) => !isAlike(word as string))).toEqual([]);
  });

  it.each(Object.entries(others))(
    '%s: show every figure and name that the English ones show',
    (_language, files) => {
      const words = wordsByName(files);
      let tried = 0;
      const missing = [...englishWords].flatMap(([place, word]) => {
        if (typeof word !== 'function' || withCodes.test(place) || inOtherFigures.test(place)) return [];
        return samples.flatMap((given) => {
          const wanted = shown(word, given);
          if (!wanted) return [];
          tried += 1;
          const found = shown(words.get(place), given);
          const left = found === null ? ['cannot be said'] : [...wanted].filter((each) => !found.has(each));
          return left.map((each) => `${place}(${given.join()}): ${each}`);
        });
      });
      expect(tried).toBeGreaterThan(500);
      expect(missing).toEqual([]);
    },
  );

  it('are registered under the name they are exported by', () => {
    const misnamed = readdirSync(path.join(i18n, 'en')).flatMap((file) =>
      [...readFileSync(path.join(i18n, 'en', file), 'utf8').matchAll(/export const (\w+) = (.*)/g)]
        .filter(([, name, made]) => !made!.includes(`('${name}',`))
        .map(([, name]) => `${file}: ${name}`),
    );
    expect(misnamed).toEqual([]);
    const names = Object.values(english).flatMap((exported) => Object.keys(exported));
    expect(new Set(names).size).toBe(names.length);
  });
});

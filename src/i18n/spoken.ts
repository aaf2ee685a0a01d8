/** Words as any language may put them: no string is bound to the English one. */
export type Widened<T> = T extends string
  ? string
  : T extends (...given: infer Given) => infer Said
    ? (...given: Given) => Widened<Said>
    : T extends object
      ? { readonly [Key in keyof T]: Widened<T[Key]> }
      : T;

/** What a language says instead of some English words; undefined where it has none of that name. */
export type Translation = (name: string, english: object) => object | undefined;

const known = new Map<string, object>();
let translation: Translation = () => undefined;

/** How numbers and days are written in the language that is spoken. */
export let locale = 'en-GB';

/**
 * English words under the name that other languages give theirs. What a language says instead is put over them in
 * place, so that a screen reads one object and English costs nothing at start.
 */
export function spoken<T extends object>(name: string, english: T): Widened<T> {
  known.set(name, english);
  putOver(english, translation(name, english));
  return english as Widened<T>;
}

/** From here on this language is spoken: by the words that are here, and by those that come later. */
export function speak(given: Translation, itsLocale: string): void {
  translation = given;
  locale = itsLocale;
  for (const [name, english] of known) putOver(english, given(name, english));
}

/** Into the groups as well: a screen may hold one of them. */
function putOver(words: object, others: object = {}): void {
  for (const [key, other] of Object.entries(others)) {
    const word = words[key as keyof typeof words];
    if (typeof word === 'object') putOver(word, other);
    else Object.assign(words, { [key]: other });
  }
}

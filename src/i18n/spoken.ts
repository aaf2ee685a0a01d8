/** Words as any language may put them: no string is bound to the English one. */
export type Widened<T> = T extends string
  ? string
  : T extends (...given: infer Given) => infer Said
    ? (...given: Given) => Widened<Said>
    : T extends object
      ? { readonly [Key in keyof T]: Widened<T[Key]> }
      : T;

const known: Record<string, object> = {};
let said: Record<string, object> = {};

/**
 * English words under the name that other languages give theirs. Whatever language is spoken is put over them in
 * place, so that a screen reads one object and English costs nothing at start.
 */
export function spoken<T extends object>(name: string, english: T): Widened<T> {
  known[name] = english;
  return Object.assign(english, said[name]) as Widened<T>;
}

/** From here on these words are said, by those objects that are there and by those that come later. */
export function speak(words: Record<string, object>): void {
  said = { ...said, ...words };
  for (const name in words) Object.assign(known[name] ?? {}, words[name]);
}

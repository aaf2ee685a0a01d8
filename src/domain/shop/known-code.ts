/** Two spellings of one code: capitals and spaces around it make no other person, and no other part. */
export function isSameCode(one: string, other: string): boolean {
  return one.trim().toLocaleLowerCase('en') === other.trim().toLocaleLowerCase('en');
}

/**
 * A code as the shop writes it, when it knows it in any spelling; else as it was typed.
 *
 * @example
 * knownCode(['K7', 'M2'], ' k7') // => 'K7'
 */
export function knownCode(codes: readonly string[], typed: string): string {
  return codes.find((code) => isSameCode(code, typed)) ?? typed.trim();
}

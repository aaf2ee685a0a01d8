/** «Y» is «e» before a word that sounds as it begins: «fresado e inspección». */
export function andBefore(word: string): 'y' | 'e' {
  return /^(h?i(?![aeou])|í|hí)/i.test(word) ? 'e' : 'y';
}

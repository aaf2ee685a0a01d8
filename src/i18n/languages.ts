/** A language that a shop may choose. */
export interface Language {
  readonly id: string;
  /** As it calls itself: whoever looks for it may read no other. */
  readonly name: string;
  /** How its numbers and days are written. */
  readonly locale: string;
}

export const languages: readonly Language[] = [
  { id: 'en', name: 'English', locale: 'en-GB' },
  { id: 'de', name: 'Deutsch', locale: 'de-DE' },
  { id: 'es', name: 'Español', locale: 'es-ES' },
];

import type { Translation } from './spoken';

/** What a language brings: its words, and how its numbers, days and lines run. */
export interface Tongue {
  readonly locale: string;
  readonly direction: 'ltr' | 'rtl';
  readonly translation: Translation;
}

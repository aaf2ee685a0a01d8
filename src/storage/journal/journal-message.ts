import type { LogRecord } from '../../domain/records/log-record';
import type { OwnEnd } from './journal-line';

/** What the page asks of the journal's worker; each is answered once under its number. */
export type JournalRequest =
  | { readonly id: number; readonly ask: 'open'; readonly fileName: string }
  | {
      readonly id: number;
      readonly ask: 'append';
      readonly device: string;
      readonly records: readonly LogRecord[];
    }
  | { readonly id: number; readonly ask: 'read' };

export type JournalAnswer =
  | { readonly id: number; readonly ownEnd: OwnEnd | null }
  /** A batch of a read; the last one has `isLast`. */
  | {
      readonly id: number;
      readonly records: readonly LogRecord[];
      readonly damaged: number;
      readonly isLast: boolean;
    }
  | { readonly id: number; readonly problem: string };

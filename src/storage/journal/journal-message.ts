import type { LogRecord } from '../../domain/records/log-record';
import type { JournalBatch } from './journal-file';
import type { OwnEnd, OwnPlace } from './journal-line';

/** What the page asks of the journal's worker; each is answered once under its number. */
export type JournalRequest =
  | { readonly id: number; readonly ask: 'open'; readonly fileName: string }
  | {
      readonly id: number;
      readonly ask: 'append';
      readonly device: string;
      readonly records: readonly LogRecord[];
    }
  | { readonly id: number; readonly ask: 'since'; readonly own: OwnPlace }
  | { readonly id: number; readonly ask: 'read'; readonly at: number };

export type JournalAnswer =
  | { readonly id: number; readonly ownEnd: OwnEnd | null }
  | { readonly id: number; readonly since: readonly LogRecord[] | null }
  | { readonly id: number; readonly batch: JournalBatch }
  | { readonly id: number; readonly problem: string };

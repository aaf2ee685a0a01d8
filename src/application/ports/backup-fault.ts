/** Why a backup file was refused. Lines are counted from 1; words for it are in `i18n`. */
export type BackupFault =
  /** The browser could not read the file; what it said. */
  | { readonly code: 'cannot-read'; readonly problem: string }
  | { readonly code: 'not-a-backup' }
  /** The file's format, or a kind of record in it, is one this release does not know. */
  | { readonly code: 'made-by-newer-version'; readonly release: string }
  | { readonly code: 'unknown-kind'; readonly line: number; readonly kind: string; readonly release: string }
  | { readonly code: 'pass-phrase-needed' | 'pass-phrase-wrong' | 'no-cryptography' }
  /** A piece of a locked file is changed, missing, or not in its place; pieces are counted from 1. */
  | { readonly code: 'piece-damaged'; readonly piece: number }
  | { readonly code: 'not-text' | 'not-json' | 'line-too-long'; readonly line: number }
  | { readonly code: 'not-a-record'; readonly line: number; readonly where: string }
  | { readonly code: 'out-of-order'; readonly line: number }
  | {
      readonly code: 'record-missing' | 'record-changed';
      readonly device: string;
      readonly sequence: number;
    }
  | { readonly code: 'cut-short'; readonly line: number }
  | { readonly code: 'more-after-end'; readonly line: number }
  | { readonly code: 'counts-differ'; readonly said: number; readonly found: number }
  | { readonly code: 'contents-changed' };

import { spoken } from '../spoken';

interface AtLine {
  readonly line: number;
}
interface OfRecord {
  readonly device: string;
  readonly sequence: number;
}

/** Why a copy is refused. What it means for the records on the tablet is not said here: they are as they were. */
export const backupFaultWords = spoken('backupFaultWords', {
  'cannot-read': ({ problem }: { problem: string }) => `The file could not be read (${problem}).`,
  'not-a-backup': 'This file is no backup of Pacewright, or its beginning is damaged.',
  'made-by-newer-version': ({ release }: { release: string }) =>
    `The file was made by a newer release${named(release)}; take that release first, then restore.`,
  'unknown-kind': ({ line, kind, release }: { line: number; kind: string; release: string }) =>
    `Line ${line} holds a kind of record that this release does not know, ${kind}: the file was made by a newer release${named(release)}, or is damaged.`,
  'pass-phrase-needed': 'The file is locked; it opens with the pass-phrase it was made with.',
  'pass-phrase-wrong':
    'The pass-phrase is not the one the file was made with, or the beginning of the file is damaged.',
  'no-cryptography':
    'The file is locked, and this browser cannot unlock it here; open the app at an https address.',
  'piece-damaged': ({ piece }: { piece: number }) =>
    `The file is damaged or was cut short: its piece ${piece} does not open.`,
  'not-text': ({ line }: AtLine) => `Line ${line} is damaged: it is not text in UTF-8.`,
  'not-json': ({ line }: AtLine) => `Line ${line} is damaged: it is not JSON.`,
  'line-too-long': ({ line }: AtLine) => `Line ${line} is longer than any record.`,
  'not-a-record': ({ line, where }: { line: number; where: string }) =>
    `Line ${line} is no record as Pacewright writes them${where && `, at ${where}`}.`,
  'out-of-order': ({ line }: AtLine) => `Line ${line} is out of order, or there twice.`,
  'record-missing': ({ sequence, device }: OfRecord) =>
    `Record ${sequence} of ${device} is missing from the file.`,
  'record-changed': ({ sequence, device }: OfRecord) =>
    `Record ${sequence} of ${device} is not what the tablet wrote: its checksum does not follow.`,
  'cut-short': ({ line }: AtLine) => `The file ends at line ${line}, before its last line: it was cut short.`,
  'more-after-end': ({ line }: AtLine) => `Line ${line} comes after the end of the backup.`,
  'counts-differ': ({ said, found }: { said: number; found: number }) =>
    `The file says that it holds ${said} records, and it holds ${found}.`,
  'contents-changed': 'The file is not what was written: its checksum (SHA-256) differs.',
});

function named(release: string): string {
  return release && `, ${release}`;
}

import type { BackupFault } from '../application/ports/backup-fault';

/**
 * Why a backup was refused, in one plain sentence on one line. What it means for the records on the tablet is
 * not said here: they are as they were, always.
 *
 * @example
 * backupFaultSentence({ code: 'cut-short', line: 812 })
 * // => 'The file ends at line 812, before its last line: it was cut short.'
 */
export function backupFaultSentence(fault: BackupFault): string {
  switch (fault.code) {
    case 'cannot-read':
      return `The file could not be read (${quoted(fault.problem)}).`;
    case 'not-a-backup':
      return 'This file is no backup of Pacewright, or its beginning is damaged.';
    case 'made-by-newer-version':
      return `The file was made by a newer release${named(fault.release)}; take that release first, then restore.`;
    case 'unknown-kind':
      return `Line ${fault.line} holds a kind of record that this release does not know, ${quoted(fault.kind)}: the file was made by a newer release${named(fault.release)}, or is damaged.`;
    case 'pass-phrase-needed':
      return 'The file is locked; it opens with the pass-phrase it was made with.';
    case 'pass-phrase-wrong':
      return 'The pass-phrase is not the one the file was made with, or the beginning of the file is damaged.';
    case 'no-cryptography':
      return 'The file is locked, and this browser cannot unlock it here; open the app at an https address.';
    case 'piece-damaged':
      return `The file is damaged or was cut short: its piece ${fault.piece} does not open.`;
    case 'not-text':
      return `Line ${fault.line} is damaged: it is not text in UTF-8.`;
    case 'not-json':
      return `Line ${fault.line} is damaged: it is not JSON.`;
    case 'line-too-long':
      return `Line ${fault.line} is longer than any record.`;
    case 'not-a-record':
      return `Line ${fault.line} is no record as Pacewright writes them${fault.where ? `, at ${quoted(fault.where)}` : ''}.`;
    case 'out-of-order':
      return `Line ${fault.line} is out of order, or there twice.`;
    case 'record-missing':
      return `Record ${fault.sequence} of ${quoted(fault.device)} is missing from the file.`;
    case 'record-changed':
      return `Record ${fault.sequence} of ${quoted(fault.device)} is not what the tablet wrote: its checksum does not follow.`;
    case 'cut-short':
      return `The file ends at line ${fault.line}, before its last line: it was cut short.`;
    case 'more-after-end':
      return `Line ${fault.line} comes after the end of the backup.`;
    case 'counts-differ':
      return `The file says that it holds ${fault.said} records, and it holds ${fault.found}.`;
    case 'contents-changed':
      return 'The file is not what was written: its checksum (SHA-256) differs.';
  }
}

function named(release: string): string {
  return release ? `, ${quoted(release)}` : '';
}

/** Short, and on one line whatever the text holds. */
function quoted(text: string): string {
  return JSON.stringify(text.length > 60 ? `${text.slice(0, 60)}…` : text);
}

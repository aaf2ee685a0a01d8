import type {
  BackupAbout,
  BackupFormat,
  BackupReading,
  BackupSource,
  BackupWriting,
  ReadingOptions,
} from '../application/ports/backup-format';
import type { Secrets } from '../application/ports/secrets';
import type { LogRecord } from '../domain/records/log-record';
import { recordLine } from '../domain/records/record-line';
import { BackupBody } from './backup-body';
import { BackupByteReader } from './backup-byte-reader';
import { backupHeaderLine } from './backup-header';
import { backupLines } from './backup-lines';
import { LOCKED_FORMAT, lockBackup, unlockBackup } from './backup-lock';
import { recordShape } from './backup-record-shape';
import { BackupRefusal } from './backup-refusal';
import { isObject } from './backup-shape';
import { BackupTally } from './backup-tally';

type Bytes = Uint8Array<ArrayBuffer>;

/** Room for a first line that a later version may have made longer. */
const LONGEST_FIRST_LINE = 4_096;

/**
 * The backup file, version 1: lines of JSON. A header, the records by device and sequence, a last line with
 * what they come to; or the same locked with a pass-phrase.
 *
 * @param secrets null where the browser has no cryptography: then nothing is locked or unlocked
 */
export function backupFormat(secrets: Secrets | null): BackupFormat {
  return {
    // Share sheets of Chromium take no file that ends otherwise (MDN, Navigator.share, from memory).
    ending: (isLocked) => (isLocked ? '-locked.txt' : '.txt'),

    takes,

    write(records, about, passphrase): BackupWriting {
      let leftOut = 0;
      const plain = written(records, about, () => {
        leftOut += 1;
      });
      if (passphrase !== undefined && (!secrets || passphrase === '')) {
        throw new RangeError(
          secrets
            ? 'writeBackup requires a pass-phrase with at least one character'
            : 'writeBackup requires a browser with cryptography for a pass-phrase',
        );
      }
      const chunks = passphrase === undefined ? plain : lockBackup(plain, passphrase, secrets!);
      return { chunks, leftOut: () => leftOut };
    },

    read: (source, options = {}) => readBackup(source, options, secrets),
  };
}

function takes(record: LogRecord): boolean {
  return recordShape(record).ok;
}

async function* written(
  records: AsyncIterable<readonly LogRecord[]>,
  about: BackupAbout,
  leaveOut: () => void,
): AsyncGenerator<Bytes> {
  const tally = new BackupTally();
  const encoder = new TextEncoder();
  const taken = (text: string) => {
    const bytes = encoder.encode(text);
    tally.take(bytes);
    return bytes;
  };
  yield taken(`${backupHeaderLine(about)}\n`);
  for await (const batch of records) {
    let text = '';
    for (const record of batch) {
      if (!takes(record)) {
        leaveOut();
        continue;
      }
      tally.count(record);
      text += `${recordLine(record)}\n`;
    }
    yield taken(text);
  }
  yield encoder.encode(`${tally.endLine()}\n`);
}

async function readBackup(
  source: BackupSource,
  { passphrase, take }: ReadingOptions,
  secrets: Secrets | null,
): Promise<BackupReading> {
  let bytes: BackupByteReader | null = null;
  try {
    bytes = new BackupByteReader(source);
    const body = new BackupBody();
    for await (const lines of backupLines(plainBytes(bytes, passphrase, secrets))) {
      const records: LogRecord[] = [];
      for (const line of lines) {
        const record = body.take(line);
        if (record) records.push(record);
      }
      if (records.length > 0) await take?.(records);
    }
    return { ok: true, summary: body.finish() };
  } catch (error) {
    if (error instanceof BackupRefusal) return { ok: false, fault: error.fault };
    throw error;
  } finally {
    await bytes?.close();
  }
}

/** The lines' bytes, unlocked where the file is locked. */
async function* plainBytes(
  bytes: BackupByteReader,
  passphrase: string | undefined,
  secrets: Secrets | null,
): AsyncGenerator<Bytes> {
  const first = await bytes.line(LONGEST_FIRST_LINE);
  if (!first) throw new BackupRefusal({ code: 'not-a-backup' });
  if (!isLocked(first)) {
    yield first;
    yield* bytes.rest();
    return;
  }
  if (!secrets) throw new BackupRefusal({ code: 'no-cryptography' });
  if (!passphrase) throw new BackupRefusal({ code: 'pass-phrase-needed' });
  yield* unlockBackup(first, bytes, passphrase, secrets);
}

function isLocked(line: Bytes): boolean {
  try {
    const header: unknown = JSON.parse(new TextDecoder().decode(line));
    return isObject(header) && header.format === LOCKED_FORMAT;
  } catch {
    return false;
  }
}

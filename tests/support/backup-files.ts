import { createHash } from 'node:crypto';
import type { BackupAbout, BackupFormat, BackupSource } from '../../src/application/ports/backup-format';
import type { RecordLog } from '../../src/application/ports/record-log';
import type { Secrets } from '../../src/application/ports/secrets';
import type { LogRecord } from '../../src/domain/records/log-record';
import { stampAt } from './records';

export type Bytes = Uint8Array<ArrayBuffer>;

export const about: BackupAbout = { release: '0.1.0', device: 'tablet-1', madeAt: stampAt(0) };

/** Secrets without the wait: a pass-phrase is stretched by one hash, and chance is a count. */
export function quickSecrets(): Secrets {
  let drawn = 0;
  return {
    randomBytes: (count) =>
      Uint8Array.from({ length: count }, () => {
        drawn += 1;
        return drawn % 256;
      }),
    async stretch(secret, salt, iterations) {
      const hash = createHash('sha256').update(`${secret} ${iterations} `).update(salt).digest();
      return new Uint8Array(hash);
    },
  };
}

export function sourceOf(bytes: Bytes | string): BackupSource {
  return new Blob([bytes]);
}

export async function joined(chunks: AsyncIterable<Bytes>): Promise<Bytes> {
  const parts: Bytes[] = [];
  for await (const chunk of chunks) parts.push(chunk);
  return new Uint8Array(await new Blob(parts).arrayBuffer());
}

/** The file of these records, a few of them at a time. */
export async function backupOf(
  format: BackupFormat,
  records: readonly LogRecord[],
  passphrase?: string,
): Promise<Bytes> {
  async function* batches() {
    for (let from = 0; from < records.length; from += 7) yield records.slice(from, from + 7);
  }
  return joined(format.write(batches(), about, passphrase).chunks);
}

export async function everythingIn(log: RecordLog): Promise<LogRecord[]> {
  const found: LogRecord[] = [];
  for await (const batch of log.readAll()) found.push(...batch);
  return found;
}

/** A file of any lines, its last line made to fit them: what a hand that knows the format could write. */
export function sealed(lines: readonly string[], end: Readonly<Record<string, unknown>> = {}): string {
  const body = lines.map((line) => `${line}\n`).join('');
  const devices: { device: unknown; records: number; first: unknown; last: unknown }[] = [];
  for (const line of lines.slice(1)) {
    const { device, sequence } = placeIn(line);
    const last = devices.at(-1);
    if (last && last.device === device) {
      last.records += 1;
      last.last = sequence;
    } else {
      devices.push({ device, records: 1, first: sequence, last: sequence });
    }
  }
  const content = {
    end: 'pacewright-backup',
    records: lines.length - 1,
    devices,
    breakCount: 0,
    breaks: [],
    sha256: createHash('sha256').update(body).digest('hex'),
    ...end,
  };
  return `${body}${JSON.stringify(content)}\n`;
}

function placeIn(line: string): { device?: unknown; sequence?: unknown } {
  try {
    return JSON.parse(line) ?? {};
  } catch {
    return {};
  }
}

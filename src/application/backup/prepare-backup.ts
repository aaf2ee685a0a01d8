import type { Bench } from '../bench';
import type { ReadyFile } from '../ports/hand-over';
import { backupName } from './backup-name';
import type { BackupTools } from './backup-tools';
import type { CopyMade, CopyRefusal } from './copy-made';
import { problemOf } from './problem-of';

export interface PreparedBackup extends CopyMade {
  readonly file: ReadyFile;
}

/**
 * Writes all records into a file and reads it back; nothing leaves the browser yet. `shareBackup` or
 * `downloadBackup` hands it over, each from a tap of its own.
 *
 * @param passphrase locks the file; without it anybody can read it
 * @throws {RangeError} writeBackup requires a browser with cryptography for a pass-phrase
 */
export async function prepareBackup(
  bench: Bench,
  { format, handOver, release }: BackupTools,
  passphrase?: string,
): Promise<({ readonly ok: true } & PreparedBackup) | CopyRefusal> {
  const madeAt = bench.clock.now();
  const { device } = bench.log;
  const unsaved = bench.saving.value.unsaved;
  // Nothing of the log is read before it is gathered.
  const { chunks, leftOut } = format.write(bench.log.readAll(), { release, device, madeAt }, passphrase);
  try {
    const upTo = (await bench.log.lastRecord())?.sequence ?? 0;
    const name = backupName(device, madeAt, format.ending(passphrase !== undefined));
    const file = await handOver.gather(name, chunks);
    const reading = await format.read(file.source, { passphrase });
    if (!reading.ok) return { ok: false, reason: 'not-verified', fault: reading.fault };
    return { ok: true, file, summary: reading.summary, upTo, unsaved, leftOut: leftOut() };
  } catch (error) {
    return { ok: false, reason: 'not-written', problem: problemOf(error) };
  }
}

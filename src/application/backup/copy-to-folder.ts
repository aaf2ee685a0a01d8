import type { Bench } from '../bench';
import type { BackupTools } from './backup-tools';
import type { CopyMade, CopyRefusal } from './copy-made';
import { freeCopyName } from './free-copy-name';
import { hasCollapsed } from './has-collapsed';
import { noteCopy } from './note-copy';
import { problemOf } from './problem-of';

export type FolderCopy =
  | ({ readonly ok: true; readonly folder: string; readonly name: string } & CopyMade)
  | CopyRefusal
  | { readonly ok: false; readonly reason: 'no-folder' }
  /** The browser has to ask the person again, from a tap: `tools.folder.askAgain()`. */
  | { readonly ok: false; readonly reason: 'permission-needed'; readonly folder: string }
  /** Today's earlier copy holds more records than can be copied now; it was left as it is. */
  | {
      readonly ok: false;
      readonly reason: 'count-collapsed';
      readonly records: number;
      readonly before: number;
    };

/**
 * Writes all records into the chosen folder outside the browser and reads the file back. One file a tablet and
 * day; files of earlier days are left alone, and so is one of today that holds what the log lacks.
 */
export async function copyToFolder(bench: Bench, tools: BackupTools): Promise<FolderCopy> {
  const { format, folder, release } = tools;
  try {
    const chosen = await folder?.chosen();
    if (!folder || !chosen) return { ok: false, reason: 'no-folder' };
    if (!chosen.mayWrite) return { ok: false, reason: 'permission-needed', folder: chosen.name };

    const madeAt = bench.clock.now();
    const { device } = bench.log;
    const unsaved = bench.saving.value.unsaved;
    const records = await bench.log.count();
    const upTo = (await bench.log.lastRecord())?.sequence ?? 0;
    const { name, before } = await freeCopyName(bench.log, format, folder, { madeAt, records });
    if (hasCollapsed(records, before)) return { ok: false, reason: 'count-collapsed', records, before };
    const { chunks, leftOut } = format.write(bench.log.readAll(), { release, device, madeAt });
    const held = () => records - leftOut();
    try {
      await folder.write(
        name,
        unless(chunks, () => held() < before),
      );
    } catch (error) {
      if (held() >= before) throw error;
      return { ok: false, reason: 'count-collapsed', records: held(), before };
    }
    const written = await folder.read(name);
    if (!written) return { ok: false, reason: 'not-written', problem: `${name} is not there` };
    const reading = await format.read(written);
    if (!reading.ok) return { ok: false, reason: 'not-verified', fault: reading.fault };
    // A share may hand out what it had before: the same tablet's, sound, and older.
    const { madeAt: when, records: read } = reading.summary;
    if (when.run !== madeAt.run || when.monoMs !== madeAt.monoMs || read < held()) {
      return { ok: false, reason: 'not-verified', fault: { code: 'contents-changed' } };
    }
    const made = { summary: reading.summary, upTo, unsaved, leftOut: leftOut() };
    noteCopy(bench, 'folder', made);
    return { ok: true, folder: chosen.name, name, ...made };
  } catch (error) {
    return { ok: false, reason: 'not-written', problem: problemOf(error) };
  }
}

/** The pieces, and an error at their end where the file must not take the place of another: it is then not written. */
async function* unless<Piece>(pieces: AsyncIterable<Piece>, isRefused: () => boolean) {
  yield* pieces;
  if (isRefused()) throw new Error('fewer records than before');
}

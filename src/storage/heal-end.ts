import type { RecordLog } from '../application/ports/record-log';
import type { ReserveShelf } from '../application/ports/reserve-shelf';
import { isChainedOn } from '../domain/records/is-chained-on';
import type { LogRecord } from '../domain/records/log-record';
import { appendOrHold } from './append-or-hold';
import type { Healing } from './heal-shelves';
import type { Journal } from './journal-client';

/** A kill leaves the shelves a few records apart; more than this is no kill. */
const FARTHEST_APART = 1_000;

/**
 * Levels two shelves of which one is a little behind: what a kill between them leaves. It reads their ends only,
 * so that it takes as long with a million records as with ten. Null where that is not enough, and they have to be
 * compared whole: a shelf that is empty, of another tablet, far behind, or damaged at its end, and two shelves of which
 * one does not go on where the other ends, because another tab wrote to one of them alone.
 *
 * @param reserve takes what a full database refuses, so that the tablet opens all the same
 */
export async function healEnd(
  database: RecordLog,
  journal: Journal,
  reserve: ReserveShelf | null,
): Promise<Healing | null> {
  const { device } = database;
  const last = await database.lastRecord();
  const end = journal.ownEnd;
  if (!last || end?.device !== device || end.sequence === 0 || end.chain === null) return null;
  const behind = end.sequence - last.sequence;
  if (behind === 0 || Math.abs(behind) > FARTHEST_APART) return null;
  if (behind > 0) {
    const written = (await journal.since({ device, sequence: last.sequence })) ?? [];
    const missing = ownBetween(written, device, last.sequence, end.sequence);
    if (missing.length !== behind || !isChainedOn(missing, last.chain)) return null;
    const restored = await appendOrHold(missing, database, reserve);
    return { restored, copied: 0, damaged: 0 };
  }
  const missing = await database.readNewest(-behind);
  if (missing.length !== -behind || !isChainedOn(missing, end.chain)) return null;
  await journal.append(missing, device);
  return { restored: 0, copied: missing.length, damaged: 0 };
}

/** The tablet's own records above one number up to another, in order: of two lines of one number the last holds. */
function ownBetween(records: readonly LogRecord[], device: string, above: number, upTo: number): LogRecord[] {
  const own = records.filter((record) => record.device === device);
  const bySequence = new Map(own.map((record) => [record.sequence, record]));
  return [...bySequence.values()]
    .filter(({ sequence }) => sequence > above && sequence <= upTo)
    .sort((a, b) => a.sequence - b.sequence);
}

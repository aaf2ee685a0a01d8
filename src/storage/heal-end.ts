import type { RecordLog } from '../application/ports/record-log';
import type { LogRecord } from '../domain/records/log-record';
import type { Healing } from './heal-shelves';
import type { Journal } from './journal-client';

/** A kill leaves the shelves a few records apart; more than this is no kill. */
const FARTHEST_APART = 1_000;

/**
 * Levels two shelves of which one is a little behind: what a kill between them leaves. It reads their ends only,
 * so that it takes as long with a million records as with ten. Null where that is not enough, and they have to be
 * compared whole: a shelf that is empty, of another tablet, far behind, or damaged at its end.
 */
export async function healEnd(database: RecordLog, journal: Journal): Promise<Healing | null> {
  const { device } = database;
  const inDatabase = (await database.lastRecord())?.sequence ?? 0;
  const end = journal.ownEnd;
  if (!end || end.device !== device || inDatabase === 0 || end.sequence === 0) return null;
  const behind = end.sequence - inDatabase;
  if (Math.abs(behind) > FARTHEST_APART) return null;
  if (behind > 0) {
    const written = (await journal.since({ device, sequence: inDatabase })) ?? [];
    const missing = ownAfter(written, device, inDatabase);
    if (missing.length !== behind) return null;
    await database.append(missing);
    return { restored: missing.length, copied: 0, damaged: 0 };
  }
  const missing = ownAfter(await database.readNewest(-behind), device, end.sequence);
  if (missing.length !== -behind) return null;
  await journal.append(missing, device);
  return { restored: 0, copied: missing.length, damaged: 0 };
}

/** The tablet's own records above a number, each once: a line may stand twice where a write was tried again. */
function ownAfter(records: readonly LogRecord[], device: string, sequence: number): LogRecord[] {
  const own = records.filter((record) => record.device === device && record.sequence > sequence);
  return [...new Map(own.reverse().map((record) => [record.sequence, record])).values()].reverse();
}

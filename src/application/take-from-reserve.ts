import type { LogRecord } from '../domain/records/log-record';
import { isSameRecord } from '../domain/records/record-key';
import { renumberRecords } from '../domain/records/renumber-records';
import type { RecordLog } from './ports/record-log';
import type { ReserveShelf } from './ports/reserve-shelf';

/**
 * Moves what an earlier page could not save from the reserve into the log. The log takes what it has already
 * as written, so a move that is cut short is made again without harm.
 *
 * Must lose no record and never stand in the way of opening: where another tab has given away the numbers
 * meanwhile, what is held goes to the end of the log under new ones.
 *
 * @returns what the log refuses still, in order, as it lies in the reserve; empty when the log has all of it
 */
export async function takeFromReserve(log: RecordLog, reserve: ReserveShelf): Promise<LogRecord[]> {
  const held = reserve.read();
  const own = held.filter(({ device }) => device === log.device);
  const place = await firstTaken(log, own);
  const displaced = place < 0 ? [] : own.slice(place);
  const next = held.filter((record) => !displaced.includes(record));
  if (displaced.length > 0) {
    next.push(...renumberRecords(displaced, (await log.lastRecord())!));
    // A kill from here on must find them under these numbers, or they would be moved twice.
    reserve.hold(next);
  }
  try {
    await log.append(next);
  } catch (error) {
    // Of a tablet that had another name: nothing here may number on from them.
    if (own.length < held.length) throw error;
    return next;
  }
  reserve.hold([]);
  return [];
}

/** Where in these the first is whose number another record has; −1 where none is. */
async function firstTaken(log: RecordLog, own: readonly LogRecord[]): Promise<number> {
  const last = (await log.lastRecord())?.sequence ?? 0;
  const from = own[0]?.sequence ?? last + 1;
  if (from > last) return -1;
  const there = new Map((await log.readNewest(last - from + 1)).map((record) => [record.sequence, record]));
  return own.findIndex((record) => {
    const other = there.get(record.sequence);
    return other !== undefined && !isSameRecord(other, record);
  });
}

import type { LogRecord } from '../domain/records/log-record';
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
  const others = held.filter(({ device }) => device !== log.device);
  const last = await log.lastRecord();
  const lowest = Math.min(...own.map(({ sequence }) => sequence));
  const there = last && last.sequence >= lowest ? await log.readNewest(last.sequence - lowest + 1) : [];
  const next = [...others, ...renumberRecords(own, last ?? { sequence: 0, chain: 0 }, there)];
  reserve.hold(next);
  try {
    await log.append(next);
  } catch (error) {
    // Of a tablet that had another name: nothing here may number on from them.
    if (others.length > 0) throw error;
    return next;
  }
  reserve.hold([]);
  return [];
}

import { chainOf } from './chain';
import { isChainedOn } from './is-chained-on';
import type { LogRecord } from './log-record';
import { recordKey } from './record-key';

/**
 * Records that were kept beside a log, as they go to its end: under their own numbers where they go on from it, else,
 * because others have the numbers by now, numbered and chained on from its last record. What they say of one another,
 * by key, goes with them; what they say of others stays.
 *
 * One that the log has already, under whatever number, is left out, and what is said of it is said of that one: a move
 * that was cut short, or that another copy of the same records made, may be made again.
 *
 * @param records of one device; two tabs may have given the same number to different ones
 * @param last the last record of that device in the log
 * @param there what the log has of that device, from the lowest number on that these records have
 */
export function renumberRecords(
  records: readonly LogRecord[],
  last: Pick<LogRecord, 'sequence' | 'chain'>,
  there: readonly LogRecord[],
): LogRecord[] {
  const known = new Map<string, string>();
  for (const [saying, record] of sayings(there)) known.set(saying, recordKey(record));
  let newKeys = new Map<string, string>();
  const chainAt = new Map(there.map(({ sequence, chain }) => [sequence, chain]));
  const next: LogRecord[] = [];
  let end: Pick<LogRecord, 'sequence' | 'chain'> = last;
  let isAnyMoved = false;
  for (const row of rowsOf(records)) {
    const [first] = row as [LogRecord];
    const chainBefore = chainAt.get(first.sequence - 1);
    // What the log has before this row goes by the log's numbers, whatever another row made of the same ones.
    if (chainBefore !== undefined && isChainedOn([first], chainBefore)) newKeys = new Map();
    for (const [saying, record] of sayings(row)) {
      const key = recordKey(record);
      const before = known.get(saying);
      if (before) {
        newKeys.set(key, before);
        continue;
      }
      const goesOn = record.sequence === end.sequence + 1 && isChainedOn([record], end.chain);
      // A gap that nobody's numbers made is one in the records, and has to be seen.
      const isBehindGap: boolean = record.sequence > end.sequence + 1 && !isAnyMoved;
      const placed: LogRecord = goesOn || isBehindGap ? record : moved(record, end, newKeys);
      isAnyMoved ||= placed !== record;
      newKeys.set(key, recordKey(placed));
      known.set(saying, recordKey(placed));
      next.push(placed);
      end = placed;
    }
  }
  return next;
}

/** The record behind another one, and what it says of those that were moved before it. */
function moved(
  record: LogRecord,
  end: Pick<LogRecord, 'sequence' | 'chain'>,
  newKeys: Map<string, string>,
): LogRecord {
  const { device } = record;
  const sequence = end.sequence + 1;
  newKeys.set(recordKey(record), recordKey({ device, sequence }));
  const told: LogRecord = JSON.parse(JSON.stringify(record), (_, value) =>
    // A key, or one with what names a piece of it: `t:12/1`, `t:12#0`.
    typeof value === 'string' ? value.replace(/^.+?:\d+(?=$|[/#])/, (key) => newKeys.get(key) ?? key) : value,
  );
  const unchained = { ...told, sequence };
  return { ...unchained, chain: chainOf(unchained, end.chain) };
}

/** Rows in which each record goes on from the one before, those with the lowest first number first. */
function rowsOf(records: readonly LogRecord[]): LogRecord[][] {
  const rows: LogRecord[][] = [];
  for (const record of records) {
    const row = rows.at(-1);
    const before = row?.at(-1);
    const goesOn = before && record.sequence === before.sequence + 1 && isChainedOn([record], before.chain);
    if (goesOn) row!.push(record);
    else rows.push([record]);
  }
  return rows.sort(([a], [b]) => a!.sequence - b!.sequence);
}

/**
 * Each with what it says and when, whatever number it has itself and those of its device have that it speaks of. Of two
 * that say the same, as two taps within one step of a coarse clock, the second is another one.
 */
function sayings(row: readonly LogRecord[]): [string, LogRecord][] {
  const times = new Map<string, number>();
  return row.map((record) => {
    const { device, stream, stamp, fact } = record;
    const said = JSON.stringify([stream, stamp, fact], (_, value) =>
      typeof value === 'string' && value.startsWith(`${device}:`) ? device : value,
    );
    const time = (times.get(said) ?? 0) + 1;
    times.set(said, time);
    return [`${time} ${said}`, record];
  });
}

import { chainOf } from './chain';
import type { LogRecord } from './log-record';
import { recordKey } from './record-key';

/**
 * Records whose numbers others have by now, at the end of a log instead: numbered and chained on from its last
 * record. What they say of one another, by key, goes with them; what they say of others stays.
 *
 * @param records of one device, in order
 * @param last the last record of that device in the log
 */
export function renumberRecords(
  records: readonly LogRecord[],
  last: Pick<LogRecord, 'sequence' | 'chain'>,
): LogRecord[] {
  const places = new Map(records.map((record, place) => [recordKey(record), last.sequence + 1 + place]));
  let { chain } = last;
  return records.map((record) => {
    const { device } = record;
    const moved = JSON.parse(JSON.stringify(record), (_, value) => {
      const place = typeof value === 'string' ? places.get(value) : undefined;
      return place === undefined ? value : recordKey({ device, sequence: place });
    });
    const unchained = { ...moved, sequence: places.get(recordKey(record))! };
    chain = chainOf(unchained, chain);
    return { ...unchained, chain };
  });
}

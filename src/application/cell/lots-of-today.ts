import { localDay } from '../../domain/day/local-day';
import { recordKey } from '../../domain/records/record-key';
import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';
import { readLots } from './read-lots';

/** The stream that holds this tablet's lots of the day, begun where there is none yet. */
export async function lotsOfToday(bench: Bench, stamp: Stamp): Promise<string> {
  const starts = await bench.log.readLatestStarts('lots', 5);
  const own = starts.find(
    (start) => start.device === bench.log.device && localDay(start.stamp) === localDay(stamp),
  );
  if (own) return recordKey(own);
  const { inside } = await readLots(bench);
  return bench.begin({ kind: 'lots-opened', starts: 'lots', inside }, stamp).stream;
}

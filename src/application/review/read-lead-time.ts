import { foldLots } from '../../domain/cell/fold-lots';
import { type LeadTimes, leadTimes } from '../../domain/cell/lead-times';
import { workingClock, workingSpans } from '../../domain/cell/working-time';
import { localDay } from '../../domain/day/local-day';
import { recordKey } from '../../domain/records/record-key';
import type { Bench } from '../bench';
import type { DaySpan } from './read-summaries';
import { readTurnsBetween } from './read-turns-between';

const DAY_MS = 86_400_000;

/** How long parts were in the cell on the days from and to, by its working time; null where no lot left. */
export async function readLeadTime(bench: Bench, { from, to }: DaySpan): Promise<LeadTimes | null> {
  const openings = await bench.log.readStarts('lots', {
    fromWallMs: Date.parse(from) - DAY_MS,
    toWallMs: Date.parse(to) + 2 * DAY_MS,
  });
  const own = openings.filter(({ stamp }) => {
    const day = localDay(stamp);
    return day >= from && day <= to;
  });
  if (own.length === 0) return null;
  const records = await Promise.all(own.map((opening) => bench.log.readStream(recordKey(opening))));
  const turns = await readTurnsBetween(bench, { from, to });
  return leadTimes(foldLots(records.flat()), workingClock(workingSpans(turns)));
}

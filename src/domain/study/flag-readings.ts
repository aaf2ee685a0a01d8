import { grubbsFlag } from '../../statistics/grubbs-flag';
import { modifiedZFlag } from '../../statistics/modified-z-flag';
import { groupBy } from '../group-by';
import type { Reading } from './study';
import { tooQuick } from './too-quick';

/**
 * Why a reading deserves a look: a second tap in one moment, a time far from the others of its element, or a page that
 * was loaded again in the middle, when a break point may have been missed by seconds.
 */
export type FlagCause = 'quick' | 'high' | 'low' | 'reloaded';

/** Nearer than this to the mean of its element, as a share, no reading is called far, however little the others spread. A rule of ours. */
export const NEAR = 0.1;

export interface FlaggedReading {
  readonly reading: Reading;
  readonly why: FlagCause;
  /** The tests that point at it; none for a quick tap and for a page that was reloaded. */
  readonly tests: readonly ('grubbs' | 'modified-z')[];
}

/**
 * Readings that deserve a look, in the order of the study: used readings that Grubbs at 5 % or the modified z
 * point at, and second taps of a double one. The tests see rated times, so that a pace already judged is no
 * outlier, and their logarithms, because hand times lean to the right. A flag decides nothing: ASTM E178 keeps
 * what may be chance, and only a person who names a cause leaves a reading out.
 */
export function flagReadings(readings: readonly Reading[]): FlaggedReading[] {
  const used = readings.filter(
    ({ row }) => row.excluded === null && row.observedMs !== null && row.elementClass !== 'foreign',
  );
  const quick = new Set(tooQuick(used));
  const flags = new Map<Reading, FlaggedReading>();
  for (const own of groupBy(used, ({ row }) => row.element).values()) {
    const tested = own.filter((reading) => !quick.has(reading) && reading.row.observedMs! > 0);
    if (tested.length === 0) continue;
    const times = tested.map(({ row }) => row.observedMs! * row.ratingPct);
    const grubbs = grubbsFlag(times);
    const modified = modifiedZFlag(times);
    const logs = times.map(Math.log);
    const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
    for (const [place, reading] of tested.entries()) {
      if (Math.abs(logs[place]! - mean) < Math.log(1 + NEAR)) continue;
      const tests: FlaggedReading['tests'][number][] = [];
      if (grubbs.tested && grubbs.flagged && grubbs.index === place) tests.push('grubbs');
      if (modified.tested && modified.flagged.includes(place)) tests.push('modified-z');
      if (tests.length > 0) flags.set(reading, { reading, why: logs[place]! > mean ? 'high' : 'low', tests });
    }
  }
  for (const reading of used) {
    if (reading.row.carried.clock_flag === 'reloaded')
      flags.set(reading, { reading, why: 'reloaded', tests: [] });
  }
  for (const reading of quick) flags.set(reading, { reading, why: 'quick', tests: [] });
  return readings.flatMap((reading) => flags.get(reading) ?? []);
}

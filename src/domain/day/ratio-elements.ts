import type { RatioElements } from './standard-ratios';
import type { DaySummary } from './summarise-day';

/**
 * What a day gives to the ratios of ISO 22400-2, milliseconds and parts: the station is the work unit, and what
 * its operators attended is what it was planned busy. Null when a part carried no target, so that no planned time
 * per item is known.
 */
export function ratioElements(day: DaySummary): RatioElements | null {
  const { done, totals, parts } = day;
  // As the breaks were taken, not as they were planned: work through a break is time that was there to work in.
  const busyMs = day.attendedMs - totals['planned-break'];
  const isMeasured = parts.every(({ targetMs }) => targetMs !== null);
  if (done === 0 || !isMeasured) return null;
  const allowedMs = parts.reduce((sum, { allowedMs: own }) => sum + own, 0);
  const counted = parts.reduce((sum, part) => sum + part.counted, 0);
  return {
    PBT: busyMs,
    APT: totals.cycle,
    AUST: totals['set-up'],
    ADET: totals.stoppage + totals['called-away'],
    AOET: day.attendedMs,
    APWT: totals.cycle + totals['set-up'] + totals.rework,
    APAT: busyMs,
    PRI: counted > 0 ? allowedMs / counted : 0,
    PQ: done,
    GQ: day.good,
    SQ: day.scrap,
    RQ: day.rework,
    GP: day.firstTime,
    IP: done,
  };
}

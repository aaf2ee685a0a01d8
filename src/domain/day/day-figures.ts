import type { DaySummary } from './summarise-day';

/** The fair figures of a day. Null where there is nothing to divide by, or no target to measure with. */
export interface DayFigures {
  /** Mean net cycle of the counted parts, milliseconds: stoppages out. */
  readonly netMs: number | null;
  /** The same with stoppages in. */
  readonly grossMs: number | null;
  /** Attended milliseconds per good part. */
  readonly perGoodMs: number | null;
  /** Earned milliseconds per good part: what the parts of the day demand. */
  readonly mixMs: number | null;
  /** Earned ÷ attended: 1 when the day earned what it attended. */
  readonly efficiency: number | null;
  /** Earned ÷ (attended − lost): performance on measured work. */
  readonly performance: number | null;
}

/**
 * The figures of a day, tied together by one identity:
 *
 *   attended ÷ good  =  (earned ÷ good) ÷ (earned ÷ attended)
 *   minutes per good part  =  mix ÷ efficiency
 *
 *   attended  time at the station without meal breaks, milliseconds
 *   good      parts good at last
 *   earned    Σ target of the good parts and set-ups × their standard, milliseconds (Z94: earned hours)
 *   lost      stoppages and calls away, milliseconds
 * A day of large parts has a greater mix; only efficiency says whether it was slow. With a good part that
 * carried no target the earned time is unknown, and so are mix, efficiency and performance.
 */
export function dayFigures(day: DaySummary): DayFigures {
  const { counted, good, attendedMs, earnedMs, parts, totals } = day;
  const isMeasured = day.untargeted === 0 && good > 0 && earnedMs > 0 && attendedMs > 0;
  const measuredMs = attendedMs - totals.stoppage - totals['called-away'];
  const sum = (of: 'netMs' | 'grossMs') => parts.reduce((total, part) => total + part[of], 0);
  return {
    netMs: counted > 0 ? sum('netMs') / counted : null,
    grossMs: counted > 0 ? sum('grossMs') / counted : null,
    perGoodMs: good > 0 ? attendedMs / good : null,
    mixMs: isMeasured ? earnedMs / good : null,
    efficiency: isMeasured ? earnedMs / attendedMs : null,
    performance: isMeasured && measuredMs > 0 ? earnedMs / measuredMs : null,
  };
}

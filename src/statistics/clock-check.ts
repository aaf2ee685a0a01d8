import { requireNumber } from './require-number';
import { requireTimes } from './require-times';

/** Above this share of the elapsed time a study is not usable; the hair keeps a plain 2 % in, however it rounds. */
const USABLE_UP_TO = 0.02 * (1 + 1e-12);

/** Times of a study, in one unit. */
export interface StudyClock {
  /** Finish less start, by the shop's clock. */
  readonly elapsed: number;
  readonly beforeStudy: number;
  readonly afterStudy: number;
  /** Sum of all element times. */
  readonly effective: number;
  /** Sum of foreign elements and stoppages. */
  readonly ineffective: number;
}

/** What the study recorded, and how far it is from what the clock says. */
export interface ClockCheck {
  readonly checkTime: number;
  readonly recorded: number;
  /** Elapsed less recorded: positive when events are missing. */
  readonly unaccounted: number;
  /** Size of the unaccounted time as a share of the elapsed. */
  readonly errorShare: number;
  readonly usable: boolean;
}

/**
 * Clock check of a study: whether what was recorded adds up to what the clock says.
 *
 * Formula: check time = before + after; recorded = check + effective + ineffective;
 *          unaccounted = elapsed − recorded; error = |unaccounted|/elapsed, not above 2 % for a usable study
 *   times in one unit; error a share
 * Source: Niebel & Freivalds, Methods, Standards, and Work Design, time study execution (through lecture notes).
 *
 * @throws {RangeError} clockCheck requires an elapsed time above 0
 * @throws {RangeError} clockCheck requires times from 0 to 1e150
 * @throws {RangeError} clockCheck requires an elapsed time of the same order as the others
 * @example
 * clockCheck({ elapsed: 100, beforeStudy: 10, afterStudy: 9, effective: 75, ineffective: 5 }).errorShare // => 0.01
 */
export function clockCheck(study: StudyClock): ClockCheck {
  const { elapsed, beforeStudy, afterStudy, effective, ineffective } = study;
  requireNumber('clockCheck', 'an elapsed time above 0', elapsed, elapsed > 0);
  requireTimes('clockCheck', [elapsed, beforeStudy, afterStudy, effective, ineffective]);
  const checkTime = beforeStudy + afterStudy;
  const recorded = checkTime + effective + ineffective;
  const unaccounted = elapsed - recorded;
  const errorShare = Math.abs(unaccounted) / elapsed;
  requireNumber('clockCheck', 'an elapsed time of the same order as the others', errorShare, true);
  return { checkTime, recorded, unaccounted, errorShare, usable: errorShare <= USABLE_UP_TO };
}

import { type ClockCheck, clockCheck } from '../../statistics/clock-check';
import type { Study } from './study';

/** Times of the clock check that a person typed from the shop's clock, milliseconds. */
export interface TypedClock {
  readonly elapsedMs: number;
  readonly beforeMs: number;
  readonly afterMs: number;
}

/** The clock check of a study: what was recorded against what a clock says. */
export interface StudyClock extends ClockCheck {
  readonly elapsedMs: number;
  readonly beforeMs: number;
  readonly afterMs: number;
  /** The operator's own path: elements, whatever was decided about them later. */
  readonly effectiveMs: number;
  /** Foreign elements and waiting for the machine. */
  readonly ineffectiveMs: number;
  readonly isTyped: boolean;
}

/**
 * Checks a study against the clock. Elements that run beside the operator, in the machine's lane, are not summed:
 * only one path fills the time. Without a typed clock the elapsed time is that of the tablet's wall clock, and the
 * time after the last break point counts as elapsed after finishing.
 *
 * Null for a study from a table, which has no clock, and for one that is still timed.
 */
export function studyClock(study: Study): StudyClock | null {
  const { readings, waits, heading, watch, startedAt, ended } = study;
  if (!heading || !ended) return null;
  let effectiveMs = 0;
  let ineffectiveMs = waits.reduce((sum, { observedMs }) => sum + observedMs, 0);
  for (const { isBeside, row } of readings) {
    const isOtherLane = isBeside || (heading.lanes === 2 && row.work === 'machine');
    if (isOtherLane || row.observedMs === null) continue;
    if (row.elementClass === 'foreign') ineffectiveMs += row.observedMs;
    else effectiveMs += row.observedMs;
  }
  const typed = study.clock;
  const afterMs = typed?.afterMs ?? Math.max(0, ended.atMs - watch.beganAtMs - watch.apartMs);
  const beforeMs = typed?.beforeMs ?? 0;
  const elapsedMs = typed?.elapsedMs ?? ended.stamp.wallMs - startedAt.wallMs;
  if (!(elapsedMs > 0)) return null;
  const check = clockCheck({
    elapsed: elapsedMs,
    beforeStudy: beforeMs,
    afterStudy: afterMs,
    effective: effectiveMs,
    ineffective: ineffectiveMs,
  });
  return { ...check, elapsedMs, beforeMs, afterMs, effectiveMs, ineffectiveMs, isTyped: typed !== null };
}

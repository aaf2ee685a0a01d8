import { localDay } from '../day/local-day';
import type { Stamp } from '../records/stamp';
import type { Turn } from './turn';

/** A night shift passes midnight between two taps; nobody is asked about that. */
const NO_QUESTION_WITHIN_MS = 3_600_000;

/**
 * Nobody has touched the turn since an earlier calendar day, so whether it still goes on is a question.
 * What the tablet wrote by itself in the meantime, such as its sleep, is no touch.
 */
export function isLeftOpen({ status, lastByHandAt }: Turn, now: Stamp): boolean {
  return (
    status !== 'ended' &&
    localDay(lastByHandAt) < localDay(now) &&
    now.wallMs - lastByHandAt.wallMs > NO_QUESTION_WITHIN_MS
  );
}

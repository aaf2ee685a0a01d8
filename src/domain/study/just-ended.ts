import { lastRateable } from './last-rateable';
import type { Reading, Study } from './study';

/**
 * The reading that has just ended, where a person set its pace. Null once a break point was missed after it, and while
 * something is timed apart: a rating given then would judge what is past.
 */
export function justEnded({ readings, watch }: Pick<Study, 'readings' | 'watch'>): Reading | null {
  return watch.merged.length > 0 || watch.aside !== null ? null : lastRateable(readings);
}

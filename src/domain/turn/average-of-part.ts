import { observedMean } from '../../statistics/observed-mean';
import type { Turn } from './turn';

/** The running average of one part in this turn, stoppages out, in milliseconds; null before its first. */
export function averageOfPart({ cycles }: Turn, part: string): { n: number; meanMs: number } | null {
  const netTimesMs = cycles.filter((cycle) => cycle.part === part).map(({ netMs }) => netMs);
  return netTimesMs.length === 0 ? null : { n: netTimesMs.length, meanMs: observedMean(netTimesMs) };
}

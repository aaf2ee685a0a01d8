import { median } from '../../statistics/median';
import type { AgainstTarget } from './against-target';

/** A day, in full or in sums. */
interface DayAgainstTarget {
  readonly day: string;
  readonly against: AgainstTarget | null;
}

/** What the parts of a day ask for on average, beside what they ask for as a rule. Milliseconds a part. */
export interface MeanTarget {
  readonly meanMs: number;
  /** The median of the other days: half of them ask for more. */
  readonly usualMs: number;
  /** By more than a day's mix moves for no reason. */
  readonly side: 'harder' | 'easier' | 'usual';
}

/** A median of fewer days is no rule. */
const FEWEST_DAYS = 5;
/** A mix that asks for this much more or less is worth a word. */
const WORTH_A_WORD = 0.05;

/**
 * Was it a hard day? The mean target of the day's parts beside that of the other days, so that a day of large parts
 * is known as one before anybody reads it as a slow one.
 *
 * Formula: mean = Σ target / n, over the good parts that carried a target and count
 *
 * Null without such parts, and below five other days.
 */
export function meanTarget(day: DayAgainstTarget, days: readonly DayAgainstTarget[]): MeanTarget | null {
  const others = days.filter((other) => other.day !== day.day).flatMap(meanOf);
  const [meanMs] = meanOf(day);
  if (meanMs === undefined || others.length < FEWEST_DAYS) return null;
  const usualMs = median(others);
  const off = meanMs / usualMs - 1;
  return {
    meanMs,
    usualMs,
    side: off > WORTH_A_WORD ? 'harder' : off < -WORTH_A_WORD ? 'easier' : 'usual',
  };
}

function meanOf({ against }: DayAgainstTarget): number[] {
  return against ? [against.targetMs / against.good] : [];
}

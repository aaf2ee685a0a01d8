import { meanInterval } from '../../statistics/mean-interval';
import { groupBy } from '../group-by';

/** One person on one day: net time of the counted parts that carried a target, and what those allow. */
export interface PersonDay {
  readonly person: string;
  readonly day: string;
  readonly parts: number;
  readonly takenMs: number;
  readonly allowedMs: number;
}

/** A person over the days, adjusted for the mix by each part's own target. */
export interface PersonFigure {
  readonly person: string;
  readonly days: number;
  readonly parts: number;
  /** Net time ÷ target time, mean of the days; null below five days: then nothing is told. */
  readonly share: number | null;
  /** Half the 95 % interval of that mean. */
  readonly halfWidth: number | null;
}

/** Fewer days are the days, and not the person. */
export const PERSON_DAYS = 5;

/**
 * Figures of single persons, in the order of their codes and in no other: nothing here ranks anybody.
 *
 * Formula: share of a day = Σ net ÷ Σ target over the person's own parts; then the mean of the days with its
 *          95 % Student interval. Stoppages are in neither.
 */
export function personFigures(days: readonly PersonDay[]): PersonFigure[] {
  const measured = days.filter(({ allowedMs, takenMs }) => allowedMs > 0 && takenMs > 0);
  return [...groupBy(measured, ({ person }) => person)]
    .map(([person, own]): PersonFigure => {
      const byDay = [...groupBy(own, ({ day }) => day).values()].map((turns) => {
        const sum = (of: 'takenMs' | 'allowedMs') => turns.reduce((total, turn) => total + turn[of], 0);
        return sum('takenMs') / sum('allowedMs');
      });
      const parts = own.reduce((sum, each) => sum + each.parts, 0);
      if (byDay.length < PERSON_DAYS) {
        return { person, days: byDay.length, parts, share: null, halfWidth: null };
      }
      const { mean, halfWidth } = meanInterval(byDay, 0.95);
      return { person, days: byDay.length, parts, share: mean, halfWidth };
    })
    .sort((a, b) => a.person.localeCompare(b.person, 'en', { numeric: true }));
}

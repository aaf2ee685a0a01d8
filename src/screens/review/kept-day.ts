import type { Bench } from '../../application/bench';

interface Kept {
  readonly day: string;
  /** The newest day there was when it was chosen. */
  readonly newest: string;
}

/** The day that was chosen last, kept while the page lives: a look at another screen must not cost it. */
const days = new WeakMap<Bench, Kept>();

export const keptDay = {
  /** Empty when none was chosen, or when a newer day has begun since: then that is what Review opens with. */
  of: (bench: Bench, newest: string): string => {
    const kept = days.get(bench);
    return kept?.newest === newest ? kept.day : '';
  },
  keep: (bench: Bench, kept: Kept): void => {
    days.set(bench, kept);
  },
};

import { lagOneAutocorrelation } from '../../statistics/lag-one-autocorrelation';

/** From here on a cycle is so like the one before it that drawing single cycles would lose that. */
const SERIAL = 0.2;
/** Cycles drawn in a row where order matters. */
const RUN = 5;

/** How many timed cycles in a row are drawn at once: 1, or 5 where the one follows from the other. */
export function cyclesInARow(totalsMs: readonly number[]): number {
  if (totalsMs.length < 3 * RUN || new Set(totalsMs).size < 2) return 1;
  return lagOneAutocorrelation(totalsMs) > SERIAL ? RUN : 1;
}

/**
 * Draws timed cycles again and again, with replacement: the place of a cycle each time. Where order matters,
 * short runs of neighbours are drawn instead of single cycles, the last one followed by the first.
 *
 * Source: H. R. Künsch, "The jackknife and the bootstrap for general stationary observations", Annals of
 * Statistics 17 (1989), for the runs (from memory).
 */
export function resampledCycles(totalsMs: readonly number[], random: () => number): () => number {
  const count = totalsMs.length;
  const row = cyclesInARow(totalsMs);
  let left = 0;
  let place = 0;
  return () => {
    if (left === 0) {
      place = Math.floor(random() * count);
      left = row;
    } else {
      place = place + 1 === count ? 0 : place + 1;
    }
    left -= 1;
    return place;
  };
}

import { requireNumber } from './require-number';

/** The three sources, each as a share of the standard time: 0.03 for ±3 %. */
export interface UncertaintySources {
  /** Half-width of the interval of the mean: the part that more readings shrink. */
  readonly sampling: number;
  /** Judgement of pace, the same on every reading of one observer: on the time that was rated, never on a machine's. */
  readonly rating: number;
  /** Frequency of occasional elements. */
  readonly frequency: number;
}

/** Total uncertainty, and whether timing more cycles could still change it. */
export interface TotalUncertainty {
  readonly total: number;
  readonly moreReadingsCannotHelp: boolean;
}

/**
 * Total uncertainty of a standard time, from sampling, rating and frequency.
 *
 * Formula: u = √(h² + u_R² + u_f²); more readings cannot help when h < u_R/2
 *   h, u_R, u_f, u  shares of the standard time
 *   At h = u_R/2 even endless timing would narrow √(h² + u_R²) by no more than 11 % of itself; another observer,
 *   or another operator rated, narrows what is left. ±5 % is the usual aim of rating practice (from memory).
 * Source: root sum of squares of independent parts, ISO/IEC Guide 98-3 (GUM) 5.1.2; the threshold is a rule of ours.
 *
 * @throws {RangeError} totalUncertainty requires finite shares of 0 or more
 * @example
 * totalUncertainty({ sampling: 0.03, rating: 0.04, frequency: 0 }).total // => 0.05
 */
export function totalUncertainty({ sampling, rating, frequency }: UncertaintySources): TotalUncertainty {
  for (const share of [sampling, rating, frequency]) {
    requireNumber('totalUncertainty', 'finite shares of 0 or more', share, share >= 0);
  }
  const total = Math.hypot(sampling, rating, frequency);
  requireNumber('totalUncertainty', 'shares whose total is a finite number', total, true);
  return { total, moreReadingsCannotHelp: sampling < rating / 2 };
}

import { observedMean } from '../../statistics/observed-mean';
import { sampleStandardDeviation } from '../../statistics/sample-standard-deviation';
import { studentQuantile } from '../../statistics/student-quantile';
import type { Quotation } from '../records/review-fact';
import type { Part } from '../shop/shop';

/** Attended time for an order, as it stands on the standard and on how the shop keeps to it. Milliseconds. */
export interface QuotedTime {
  /** Set-up and Q × standard time. */
  readonly standardMs: number;
  /** The same over the shop's own efficiency; as the standard has it while no efficiency is known. */
  readonly totalMs: number;
  /** 95 % of such orders are expected between these; null below five days. */
  readonly lowMs: number | null;
  readonly highMs: number | null;
  /** Days that the efficiency comes from. */
  readonly days: number;
}

/** Fewer days tell no efficiency that an order could rest on, and no spread. */
const QUOTE_DAYS = 5;

/**
 * The time to quote for Q parts.
 *
 * Formula: total = (set-up + Q·ST) ÷ ē, from total ÷ (1 + r) to total ÷ (1 − r), r = √(rₑ² + r_s²)
 *   rₑ    t·s·√(1/n + 1/d) ÷ ē: how far the efficiency of those days may be off
 *   r_s   Q·h ÷ (set-up + Q·ST): how far the standard may be off, h half its interval; 0 where none is given
 *   ST    standard time a part; set-up its standard, milliseconds
 *   ē, s  mean and sample deviation of the daily efficiency over n days
 *   d     days that the order takes, never below one: a long order averages its days
 *   t     two-sided 95 % Student quantile on n − 1 degrees of freedom
 * The interval of a future mean: it holds both how well the efficiency is known and how days differ.
 *
 * @param dayMs attended time of a day, milliseconds
 */
export function quoteTime(
  order: {
    readonly quantity: number;
    readonly standardMs: number;
    readonly setUpMs: number;
    /** Half the interval of the standard time, as standard data gives it for a size. */
    readonly standardHalfMs?: number;
  },
  efficiencies: readonly number[],
  dayMs: number,
): QuotedTime {
  const standardMs = order.setUpMs + order.quantity * order.standardMs;
  const days = efficiencies.length;
  const mean = expectedEfficiency(efficiencies);
  if (mean === null) return { standardMs, totalMs: standardMs, lowMs: null, highMs: null, days };
  const totalMs = standardMs / mean;
  const taken = Math.max(1, totalMs / dayMs);
  const reach =
    studentQuantile(0.975, days - 1) *
    sampleStandardDeviation(efficiencies) *
    Math.sqrt(1 / days + 1 / taken);
  const off = Math.hypot(reach / mean, (order.quantity * (order.standardHalfMs ?? 0)) / standardMs);
  // Days that differ wildly would have an order never end.
  return {
    standardMs,
    totalMs,
    lowMs: totalMs / (1 + off),
    highMs: off < 1 ? totalMs / (1 - off) : null,
    days,
  };
}

/** The mean of the daily efficiencies, 1 for 100 %; null while too few days have one. */
export function expectedEfficiency(efficiencies: readonly number[]): number | null {
  return efficiencies.length < QUOTE_DAYS ? null : observedMean(efficiencies);
}

/** Whether a quotation still rests on what the shop holds to be true of the part. */
export function isOverhauled(quotation: Quotation, part: Part | undefined): boolean {
  // A size that the shop has no part for rests on what was typed, and on nothing that could change.
  if (quotation.part === '') return false;
  if (!part) return true;
  const revision = part.methods.at(-1)?.revision ?? null;
  return (
    quotation.perPartMs !== part.targetMs ||
    quotation.methodRevision !== revision ||
    quotation.study !== part.targetStudy
  );
}

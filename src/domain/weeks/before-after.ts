import { type ComparisonVerdict, comparisonVerdict } from '../../statistics/comparison-verdict';
import { jackknifeComparison } from '../../statistics/jackknife-comparison';
import type { MeanComparison } from '../../statistics/mean-comparison';
import type { PartAccount } from '../day/part-account';
import type { DaySummary } from '../day/summarise-day';

/** Two periods beside each other: net time a part, days as what repeats. Milliseconds. */
export interface BeforeAfter {
  readonly beforeMs: number;
  readonly afterMs: number;
  /** After ÷ before, with the interval by days. */
  readonly ratio: { readonly value: number; readonly lower: number; readonly upper: number };
  /** After − before, with the interval by days. */
  readonly difference: { readonly value: number; readonly lower: number; readonly upper: number };
  readonly degreesOfFreedom: number;
  readonly days: readonly [before: number, after: number];
  readonly parts: readonly [before: number, after: number];
  /** The smallest difference that matters, as it was fixed. */
  readonly thresholdMs: number;
  readonly verdict: ComparisonVerdict;
  /** Codes of the parts that both periods made; the others are left out. */
  readonly compared: readonly string[];
  readonly leftOut: readonly string[];
}

export type NotComparable = 'too-few-days' | 'no-part-in-both' | 'no-spread';

/** Share of each part in the mix that both periods are standardised to, by the part's id. */
export type FixedMix = ReadonlyMap<string, number>;

/**
 * Before and after: like with like, over one fixed mix, with an interval that knows that a day is what repeats.
 *
 * Formula: standardised time = Σ w·m ÷ Σ w over the parts that both periods made on two days or more
 *   m  mean net cycle of the part over the period, milliseconds: for one part the mean of its daily averages
 *   w  its weight: the parts counted in both periods, or a mix that is given
 * Interval of the difference and of the logarithm of the ratio: leaving out one day at a time, 95 %; the verdict
 * also asks the 90 % interval whether nothing that matters happened (two one-sided tests).
 *
 * @param thresholdPct the smallest difference that matters, percent of the time before; fixed before looking
 */
export function beforeAfter(
  before: readonly DaySummary[],
  after: readonly DaySummary[],
  options: { readonly part?: string | null; readonly thresholdPct: number; readonly mix?: FixedMix },
): BeforeAfter | NotComparable {
  const { part = null, thresholdPct } = options;
  const counted = (days: readonly DaySummary[]) =>
    days
      .map(({ parts }) => parts.filter((each) => each.counted > 0 && (part === null || each.part === part)))
      .filter((parts) => parts.length > 0);
  const [old, now] = [counted(before), counted(after)];
  if (old.length < 2 || now.length < 2) return 'too-few-days';
  const inBoth = partsOnTwoDays(old).filter((id) => partsOnTwoDays(now).includes(id));
  if (inBoth.length === 0) return 'no-part-in-both';
  const weights = options.mix ?? countedOf([...old, ...now]);
  const figure = (days: readonly Day[]) => standardised(days, inBoth, weights);

  const [beforeMs, afterMs] = [figure(old), figure(now)];
  const compare = (of: (days: readonly Day[]) => number, confidence: number) =>
    comparisonOf(now, old, of, confidence);
  const difference = compare(figure, 0.95);
  const narrower = compare(figure, 0.9);
  const logRatio = compare((days) => Math.log(figure(days)), 0.95);
  if (!difference || !narrower || !logRatio) return 'no-spread';
  const thresholdMs = (thresholdPct / 100) * beforeMs;
  const codes = (wanted: (id: string) => boolean) => [
    ...new Set(
      [...old, ...now].flatMap((day) => day.filter((each) => wanted(each.part)).map((p) => p.partCode)),
    ),
  ];
  return {
    beforeMs,
    afterMs,
    ratio: { value: afterMs / beforeMs, lower: Math.exp(logRatio.lower), upper: Math.exp(logRatio.upper) },
    difference: { value: difference.difference, lower: difference.lower, upper: difference.upper },
    degreesOfFreedom: difference.degreesOfFreedom,
    days: [old.length, now.length],
    parts: [countOf(old, inBoth), countOf(now, inBoth)],
    thresholdMs,
    verdict: comparisonVerdict(difference, { threshold: thresholdMs, equivalence: narrower }),
    compared: codes((id) => inBoth.includes(id)),
    leftOut: codes((id) => !inBoth.includes(id)),
  };
}

type Day = readonly PartAccount[];

/** Null where the days do not differ at all: then nothing tells how sure it is. */
function comparisonOf(
  now: readonly Day[],
  old: readonly Day[],
  figure: (days: readonly Day[]) => number,
  confidence: number,
): MeanComparison | null {
  try {
    return jackknifeComparison(now, old, figure, { confidence });
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

function standardised(days: readonly Day[], parts: readonly string[], weights: FixedMix): number {
  let time = 0;
  let weight = 0;
  for (const part of parts) {
    const own = days.flatMap((day) => day.filter((each) => each.part === part));
    const share = weights.get(part) ?? 0;
    time += share * (parts.length === 1 ? meanOfDays(own) : meanOfParts(own));
    weight += share;
  }
  return time / weight;
}

function meanOfDays(own: readonly PartAccount[]): number {
  return own.reduce((sum, { netMs, counted }) => sum + netMs / counted, 0) / own.length;
}

function meanOfParts(own: readonly PartAccount[]): number {
  return own.reduce((sum, { netMs }) => sum + netMs, 0) / own.reduce((sum, { counted }) => sum + counted, 0);
}

/** A part of one day only would be gone when that day is left out. */
function partsOnTwoDays(days: readonly Day[]): string[] {
  const seen = new Map<string, number>();
  for (const day of days) for (const { part } of day) seen.set(part, (seen.get(part) ?? 0) + 1);
  return [...seen].filter(([, times]) => times > 1).map(([part]) => part);
}

function countedOf(days: readonly Day[]): Map<string, number> {
  const counted = new Map<string, number>();
  for (const day of days) {
    for (const each of day) counted.set(each.part, (counted.get(each.part) ?? 0) + each.counted);
  }
  return counted;
}

function countOf(days: readonly Day[], parts: readonly string[]): number {
  const counted = countedOf(days);
  return parts.reduce((sum, part) => sum + (counted.get(part) ?? 0), 0);
}

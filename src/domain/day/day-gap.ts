import { dayFigures } from './day-figures';
import type { DaySummary } from './summarise-day';

/** What can make a good part take longer on one day than on another. */
export type GapCause =
  | 'mix'
  | 'hands'
  | 'scrap-rework'
  | 'stoppage'
  | 'set-up'
  | 'planned-break'
  | 'unaccounted';

/** What a cause adds to a good part of the first day beyond one of the second, milliseconds; negative where it saves. */
export interface GapStep {
  readonly cause: GapCause;
  readonly ms: number;
}

/**
 * The difference between two days in attended time per good part, cause by cause. The steps add up to it, and the same
 * steps come out, with their signs turned, when the days change places.
 *
 * Formula: step = L(p₁, p₂) · Δln mix for the mix, and L(p₁, p₂) · Δr ÷ L(y₁, y₂) for every other cause
 *   p  attended ÷ good, y = attended ÷ earned, Δ first − second day
 *   L  logarithmic mean (a − b) ÷ ln(a ÷ b), which makes of a difference in logarithms one in time
 *   r  time of the cause that earned nothing ÷ earned: for the hands T(cycle) · G/N − Σ targets, for scrap and rework
 *      T(cycle) · (1 − G/N) + T(rework), for set-ups T(set-up) − their standards, for any other its time;
 *      G parts good at last of N done. Σ r = y − 1.
 * Source: B. W. Ang, Energy Policy 33, 2005, pp. 867–871 (logarithmic mean Divisia index: exact, and symmetric in time).
 * Times in milliseconds. Null when a day has no efficiency.
 */
export function dayGap(first: DaySummary, second: DaySummary): readonly GapStep[] | null {
  const [a, b] = [measured(first), measured(second)];
  if (!a || !b) return null;
  const perGood = logarithmicMean(a.perGoodMs, b.perGoodMs);
  const perEarned = logarithmicMean(1 / a.efficiency, 1 / b.efficiency);
  const [own, other] = [beyondEarned(first), beyondEarned(second)];
  return [
    { cause: 'mix', ms: perGood * Math.log(a.mixMs / b.mixMs) },
    ...own.map(({ cause, share }, place) => ({
      cause,
      ms: (perGood * (share - other[place]!.share)) / perEarned,
    })),
  ];
}

function measured(day: DaySummary) {
  const { perGoodMs, mixMs, efficiency } = dayFigures(day);
  return perGoodMs === null || mixMs === null || efficiency === null
    ? null
    : { perGoodMs, mixMs, efficiency };
}

/** Time that earned nothing, by cause, as a share of the time earned. */
function beyondEarned({ totals, parts, earnedMs, good, done }: DaySummary) {
  const targetsMs = parts.reduce((sum, part) => sum + part.earnedMs, 0);
  const onGoodMs = (totals.cycle * good) / done;
  const times = {
    hands: onGoodMs - targetsMs,
    'scrap-rework': totals.cycle - onGoodMs + totals.rework,
    stoppage: totals.stoppage + totals['called-away'],
    'set-up': totals['set-up'] - (earnedMs - targetsMs),
    'planned-break': totals['planned-break'],
    unaccounted: totals.unaccounted,
  } as const satisfies Record<Exclude<GapCause, 'mix'>, number>;
  return (Object.keys(times) as (keyof typeof times)[]).map((cause) => ({
    cause,
    share: times[cause] / earnedMs,
  }));
}

function logarithmicMean(a: number, b: number): number {
  // Where they are all but equal the quotient is of two noughts; the plain mean is right to eight digits there.
  return Math.abs(a / b - 1) < 1e-4 ? (a + b) / 2 : (a - b) / Math.log(a / b);
}

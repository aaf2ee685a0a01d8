import { median } from '../../statistics/median';
import { plainPart } from '../records/plain-part';
import type { PartInHand } from '../records/turn-fact';
import type { Doubt } from './doubt';
import type { Cycle } from './turn';

/** Below this many parts a run says nothing. */
const SHORTEST_RUN = 5;
/** Outside of these the times do not fit the target in hand … */
const OWN_FITS = { from: 0.7, to: 1.4 };
/** … and inside of these they fit another part's. Net time over target, median of the run. */
const OTHER_FITS = { from: 0.85, to: 1.15 };

/**
 * The runs of parts whose times do not fit their own target and do fit that of another part. Nor do they fit it by the
 * pace of the turn's other parts: where all of them take half as long again, the method is another, and no part is wrong.
 */
export function wrongParts(
  cycles: readonly Cycle[],
  candidates: readonly PartInHand[],
  confirmed: ReadonlySet<string>,
): Extract<Doubt, { kind: 'another-part' }>[] {
  return runsOf(cycles).flatMap((run) => {
    const first = run[0]!;
    const counted = run.filter(isMeasured);
    if (counted.length < SHORTEST_RUN || run.some(({ key }) => confirmed.has(key))) return [];
    const ratio = median(counted.map(shareOfTarget));
    if (fitsOwn(ratio) || fitsOwn(ratio / paceOfOthers(cycles, first.part))) return [];
    // From tap to tap: how many parts a tap stands for is the part's own matter.
    const tapMs = median(counted.map(({ netMs, together }) => netMs * together));
    const fits = closest(tapMs, first.part, candidates);
    if (!fits) return [];
    return {
      kind: 'another-part' as const,
      key: first.key,
      fromMs: first.fromMs,
      toMs: run.at(-1)!.toMs,
      suggestion: { fits: plainPart(fits), partsDone: run.map(({ key }) => key) },
    };
  });
}

function isMeasured({ isCounted, targetMs }: Cycle): boolean {
  return isCounted && targetMs !== null && targetMs > 0;
}

function shareOfTarget({ netMs, targetMs }: Cycle): number {
  return netMs / targetMs!;
}

function fitsOwn(ratio: number): boolean {
  return ratio >= OWN_FITS.from && ratio <= OWN_FITS.to;
}

/** Net time over target, median of the other parts; 1 where there are too few to tell. */
function paceOfOthers(cycles: readonly Cycle[], part: string): number {
  const others = cycles.filter((cycle) => cycle.part !== part && isMeasured(cycle));
  return others.length < SHORTEST_RUN ? 1 : median(others.map(shareOfTarget));
}

function runsOf(cycles: readonly Cycle[]): Cycle[][] {
  const runs: Cycle[][] = [];
  for (const cycle of cycles) {
    const run = runs.at(-1);
    if (run?.[0]?.part === cycle.part) run.push(cycle);
    else runs.push([cycle]);
  }
  return runs;
}

/** The part whose target the time of a tap fits best; null when it fits none. */
function closest(tapMs: number, own: string, candidates: readonly PartInHand[]): PartInHand | null {
  let best: PartInHand | null = null;
  let bestOff = Number.POSITIVE_INFINITY;
  for (const candidate of candidates) {
    const { part, targetMs, partsPerTap = 1 } = candidate;
    if (part === own || targetMs === null || targetMs <= 0) continue;
    const ratio = tapMs / (targetMs * partsPerTap);
    const off = Math.abs(Math.log(ratio));
    if (ratio < OTHER_FITS.from || ratio > OTHER_FITS.to || off >= bestOff) continue;
    best = candidate;
    bestOff = off;
  }
  return best;
}

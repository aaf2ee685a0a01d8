import { type Branches, branchesOf } from './branches';
import type { CellWork, OccasionalWork } from './cell-work';

/** Whose branch sets the pace. A tie: either does in at least a quarter of the cycles. */
export type Governor = 'hands' | 'machine' | 'tie' | 'other';

/** What a part takes in the cell. Times in milliseconds a part; shares 0 to 1. */
export interface CellCycle {
  /** Timed cycles in which every element was read. */
  readonly cycles: number;
  readonly externalMs: number;
  readonly internalMs: number;
  readonly machineMs: number;
  readonly otherMs: number;
  /** Mean of external + max(internal, machine) over the cycles, occasional work left out. */
  readonly cycleMs: number;
  /** The same from the means alone: what a balance chart of averages shows. */
  readonly byMeansMs: number;
  /** What the two lose by waiting for each other in turn, now the one, now the other. */
  readonly tieLossMs: number;
  readonly occasionalMs: number;
  /** A part with its share of occasional work: what the output follows. */
  readonly partMs: number;
  readonly governs: Governor;
  /** Of these, cycles in which the machine took longer than the hands beside it; 0 without a machine. */
  readonly machineCycles: number;
  readonly hasMachine: boolean;
  /** Pace at which the machine takes over, 100 = standard; null without a machine. */
  readonly takeoverPct: number | null;
}

/**
 * The cycle of a cell of one operator and one or more machines that are alike.
 *
 * Formula: cycle = mean of max(external + internal, (external + machine)/N), at least the other person's mean
 *   With one machine that is external + max(internal, machine). The mean is taken over whole cycles, since the
 *   mean of the longer one exceeds the longer of the means.
 *   Internal occasional work lengthens a part only past the slack: f·(mean of max(internal + o, …) − mean of max).
 * Source: Groover, Work Systems, chapter 13; the order of mean and maximum is Jensen's inequality.
 */
export function cellCycle(work: CellWork, machines = 1): CellCycle {
  const branches = branchesOf(work);
  const { external, internal, machine, other } = branches;
  const [externalMs, internalMs, machineMs, otherMs] = [external, internal, machine, other].map(mean) as [
    number,
    number,
    number,
    number,
  ];
  const { cellMs, occasionalMs, partMs } = partTimes(branches, work.occasionals, machines);
  const cycleMs = Math.max(cellMs, otherMs);
  const byMeansMs = Math.max(externalMs + internalMs, (externalMs + machineMs) / machines, otherMs);
  // Who took longer is told by cycles that were read whole, where there are any.
  const told = work.complete.length > 0 ? work.complete : external.map((_, i) => i);
  let machineCycles = 0;
  for (const i of told) {
    const hands = external[i]! + internal[i]!;
    if ((external[i]! + machine[i]!) / machines > hands) machineCycles += 1;
  }
  const share = told.length > 0 ? machineCycles / told.length : 0;
  const isTie = machineMs > 0 && share >= 0.25 && share <= 0.75;
  const between: Governor = isTie ? 'tie' : share > 0.5 ? 'machine' : 'hands';
  return {
    cycles: told.length,
    externalMs,
    internalMs,
    machineMs,
    otherMs,
    cycleMs,
    byMeansMs,
    tieLossMs: Math.max(0, cycleMs - byMeansMs),
    occasionalMs,
    partMs,
    governs: otherMs > cellMs + occasionalMs ? 'other' : between,
    machineCycles,
    hasMachine: machineMs > 0,
    takeoverPct: machineMs > 0 ? (100 * internalMs) / machineMs : null,
  };
}

/** Mean times of operator and machines without occasional work, of that, and of a part; milliseconds. */
export function partTimes(
  branches: Branches,
  occasionals: readonly OccasionalWork[],
  machines: number,
): { cellMs: number; occasionalMs: number; partMs: number } {
  const cellMs = governedMean(branches, machines, 0);
  const occasionalMs = occasionals.reduce((sum, { place, meanMs, everyParts }) => {
    const extra = place === 'external' ? meanMs : governedMean(branches, machines, meanMs) - cellMs;
    return sum + extra / everyParts;
  }, 0);
  // Occasional work is the operator's: behind a slower person it is done while waiting.
  return { cellMs, occasionalMs, partMs: Math.max(mean(branches.other), cellMs + occasionalMs) };
}

/** Mean of the governed cycle a part, with so much more internal work in every cycle. */
function governedMean(
  { external, internal, machine }: Branches,
  machines: number,
  extraInternalMs: number,
): number {
  let sum = 0;
  for (let i = 0; i < external.length; i += 1) {
    const hands = external[i]! + internal[i]! + extraInternalMs;
    sum += Math.max(hands, (external[i]! + machine[i]!) / machines);
  }
  return external.length > 0 ? sum / external.length : 0;
}

function mean(times: Float64Array): number {
  return times.length > 0 ? times.reduce((sum, time) => sum + time, 0) / times.length : 0;
}

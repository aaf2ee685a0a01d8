import type { CellPlan } from './cell-plan';
import { type CellRunSummary, summariseRun } from './compare-cells';
import { type CellRun, CellSimulation } from './simulate-cell';

/** A simulated run with its figures, which are wanted in several places. */
export interface SimulatedRun {
  readonly run: CellRun;
  readonly summary: CellRunSummary;
}

/** What a simulation gave so far. */
export function simulatedSoFar(simulation: CellSimulation): SimulatedRun {
  const run = simulation.result();
  return { run, summary: summariseRun(run) };
}

/** So many days of a plan, and however short those are, a few trolleys that have left. */
export function simulatedDays(plan: CellPlan, seed: number, days: number): SimulatedRun {
  const simulation = new CellSimulation(plan, seed);
  simulation.runUntilDay(days);
  simulation.runParts(4 * (plan.trolley + plan.machines));
  return simulatedSoFar(simulation);
}

/**
 * What a long run of a changed cell would give, from a short one: the long run of the cell as it is, and what the
 * change did in the same short stretch of luck. The days that it holds are those of the short run.
 */
export function carriedOver(long: SimulatedRun, before: SimulatedRun, after: SimulatedRun): SimulatedRun {
  const names = Object.keys(long.summary) as (keyof CellRunSummary)[];
  const summary = Object.fromEntries(
    names.map((name) => [
      name,
      Math.max(0, long.summary[name] + (after.summary[name] - before.summary[name])),
    ]),
  ) as Record<keyof CellRunSummary, number>;
  const machineRuns = long.run.machineRuns + after.run.machineRuns - before.run.machineRuns;
  return { run: { ...after.run, machineRuns: Math.max(0, Math.min(1, machineRuns)) }, summary };
}

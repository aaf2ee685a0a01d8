import { useEffect, useMemo, useState } from 'preact/hooks';
import type { CellPlan } from '../../domain/cell/cell-plan';
import { CellSimulation } from '../../domain/cell/simulate-cell';
import {
  carriedOver,
  type SimulatedRun,
  simulatedDays,
  simulatedSoFar,
} from '../../domain/cell/simulated-days';
import { useApp } from '../app';
import { FEWEST_DAYS } from './present-run';

export interface Runs {
  readonly before: SimulatedRun;
  readonly after: SimulatedRun;
}

/** Days behind the answer that comes with the tap; the rest follows while the finger is on its way. */
const AT_ONCE = 10;
const DAYS_IN_A_SLICE = 10;
const SETTLE_AFTER_MS = 150;

interface Settled extends Runs {
  readonly plan: CellPlan;
}

/**
 * Now and then over the same days: from a few days with the tap, from all of them a moment later. `settled` are the
 * last ones of all days, for what is too slow to be drawn with every tap.
 */
export function useTriedRuns(
  before: SimulatedRun,
  plans: { before: CellPlan; after: CellPlan },
  seed: number,
) {
  const { bench } = useApp();
  const { after } = plans;
  const { days } = before.run;
  const few = Math.max(FEWEST_DAYS, Math.min(AT_ONCE, days));
  const [settled, setSettled] = useState<Settled>({ before, after: before, plan: plans.before });
  const isSettled = settled.plan === after && settled.before === before;
  const shortBefore = useMemo(() => simulatedDays(plans.before, seed, few), [plans.before, seed, few]);
  const quick = useMemo(
    () => carriedOver(before, shortBefore, simulatedDays(after, seed, few)),
    [before, shortBefore, after, seed, few],
  );
  useEffect(() => {
    if (isSettled) return;
    const simulation = new CellSimulation(after, seed);
    const goOn = (until: number, delayMs: number): (() => void) =>
      bench.clock.after(delayMs, () => {
        simulation.runUntilDay(Math.min(until, days));
        if (until < days) stop = goOn(until + DAYS_IN_A_SLICE, 0);
        else {
          simulation.runParts(4 * (after.trolley + after.machines));
          setSettled({ before, after: simulatedSoFar(simulation), plan: after });
        }
      });
    let stop = goOn(DAYS_IN_A_SLICE, SETTLE_AFTER_MS);
    return () => stop();
  }, [bench, before, after, seed, days, isSettled]);
  return { runs: isSettled ? settled : { before, after: quick }, settled };
}

import { useEffect, useState } from 'preact/hooks';
import { type SimulatedRun, simulatedDays } from '../../domain/cell/simulated-days';
import { useApp } from '../app';
import { planCell, presentSetup } from './plan-cell';
import type { ReckonedPart } from './reckon-parts';
import { dayMsOf } from './reckon-parts';
import type { CellData } from './use-cell';

interface DaysAndParts {
  readonly days: number;
  readonly parts: number;
}

/** Days and parts behind an answer, and behind a longer one: whichever is less. */
const QUICK: DaysAndParts = { days: 60, parts: 60_000 };
export const LONG: DaysAndParts = { days: 2_500, parts: 3_000_000 };
/** An interval needs more than two days. */
export const FEWEST_DAYS = 3;

export const daysWithin = ({ days, parts }: DaysAndParts, dayMs: number, partMs: number) =>
  Math.max(FEWEST_DAYS, Math.min(days, Math.floor((parts * partMs) / dayMs)));

const known = new WeakMap<ReckonedPart, SimulatedRun>();

/** The cell as it is, simulated once for each part, so that every page says the same of it. */
export function presentRun(cell: CellData, part: ReckonedPart): SimulatedRun {
  let run = known.get(part);
  if (!run) {
    const days = daysWithin(QUICK, dayMsOf(cell), part.cycle.partMs);
    run = simulatedDays(planCell(cell, part.work, presentSetup(cell)), 1, days);
    known.set(part, run);
  }
  return run;
}

/** Good parts a day of each part, one after the other so that the page is there first; undefined until then. */
export function useGoodPerDay(cell: CellData, parts: readonly ReckonedPart[]) {
  const { bench } = useApp();
  const [ran, setRan] = useState(0);
  const next = parts.find((part) => !known.has(part));
  useEffect(() => {
    if (!next) return;
    return bench.clock.after(0, () => {
      presentRun(cell, next);
      setRan(ran + 1);
    });
  }, [bench, cell, next, ran]);
  return (part: ReckonedPart) => known.get(part)?.summary.meanGood;
}

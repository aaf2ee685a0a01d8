import { useMemo, useState } from 'preact/hooks';
import { activityChart } from '../../domain/cell/activity-chart';
import { type CellChange, changedWork, noChange } from '../../domain/cell/cell-change';
import { cellCycle } from '../../domain/cell/cell-cycle';
import type { CellPlan } from '../../domain/cell/cell-plan';
import { changeEffect } from '../../domain/cell/change-effect';
import { type CellRunSummary, moreGoodParts, summariseRun } from '../../domain/cell/compare-cells';
import { type CellRun, CellSimulation } from '../../domain/cell/simulate-cell';
import { cellWhatIf as says } from '../../i18n/en/cell-what-if';
import { ActivityPicture } from './activity-picture';
import { ChangeControls } from './change-controls';
import { ChangeFigures } from './change-figures';
import { ChangeSentence } from './change-sentence';
import { DaysPicture } from './days-picture';
import { HowReckoned } from './how-reckoned';
import { LongRun } from './long-run';
import { PartChoice, type PartProps } from './part-choice';
import { planCell, type Setup } from './plan-cell';
import type { CellData } from './use-cell';

/** Days and parts behind an answer that comes with the tap, and behind a longer one: whichever is less. */
const QUICK = { days: 60, parts: 60_000 };
const LONG = { days: 2_500, parts: 3_000_000 };
/** An interval needs more than two days. */
const FEWEST_DAYS = 3;

/** Changes tried on paper: the answer in words, then now beside then. */
export function WhatIf({ cell, parts, part, choose }: PartProps & { cell: CellData }) {
  const { arrivalLot, refillAt, trolley } = cell.settings;
  const now = useMemo<Setup>(
    () => ({ machines: 1, buffer: 1, arrivalLot, refillAt, trolley }),
    [arrivalLot, refillAt, trolley],
  );
  const [change, setChange] = useState<CellChange>(noChange);
  const [setup, setSetup] = useState(now);
  const [seed, setSeed] = useState(1);
  const [long, setLong] = useState<Runs | null>(null);

  const before = useMemo(() => planCell(cell, part.work, now), [cell, part, now]);
  const after = useMemo(() => {
    const own = { ...setup, machines: change.machines };
    return planCell(cell, changedWork(part.work, change), own);
  }, [cell, part, change, setup]);
  const plans = useMemo(() => ({ before, after }), [before, after]);
  const cycles = { before: cellCycle(before.work), after: cellCycle(after.work, change.machines) };
  const partsPerDay = before.dayMs / Math.min(cycles.before.partMs, cycles.after.partMs);
  const daysOf = ({ days, parts }: typeof QUICK) =>
    Math.max(FEWEST_DAYS, Math.min(days, Math.floor(parts / partsPerDay)));
  const days = daysOf(QUICK);
  // What the cell does now is simulated once; only what is tried is simulated with every tap.
  const quickBefore = useMemo(() => quickRun(before, seed, days), [before, seed, days]);
  const quickAfter = useMemo(() => quickRun(after, seed, days), [after, seed, days]);
  const runs = long ?? { before: quickBefore, after: quickAfter };
  const more = moreGoodParts(runs.before.run, runs.after.run);
  const isChanged = change !== noChange || setup !== now;
  const effect = changeEffect(cycles.before, cycles.after);
  const scaleEndMs = Math.max(
    activityChart(before.work).roundMs,
    activityChart(after.work, change.machines).roundMs,
  );

  const take = (to: { change?: CellChange; setup?: Setup; seed?: number }) => {
    setLong(null);
    if (to.change) setChange(to.change);
    if (to.setup) setSetup(to.setup);
    if (to.seed) setSeed(to.seed);
  };
  return (
    <>
      <PartChoice parts={parts} part={part} choose={choose} />
      <ChangeSentence
        isChanged={isChanged}
        isLotsOnly={change === noChange}
        hasMachine={part.cycle.hasMachine}
        effect={effect}
        moreParts={more.difference}
        leadsMs={[runs.before.summary.meanLeadMs, runs.after.summary.meanLeadMs]}
      />
      <div class="cell-try">
        <ChangeControls
          part={part}
          change={change}
          setup={setup}
          isChanged={isChanged}
          take={take}
          reset={() => take({ change: noChange, setup: now })}
        />
        <section class="stack">
          <ChangeFigures isChanged={isChanged} cycles={cycles} runs={runs} more={more} />
          <DaysPicture runs={isChanged ? [runs.before, runs.after] : [runs.before]} />
          <LongRun
            plans={plans}
            days={runs.before.run.days}
            longDays={daysOf(LONG)}
            seed={seed}
            otherLuck={() => take({ seed: seed + 1 })}
            done={setLong}
          />
        </section>
      </div>
      <div class="cell-sides">
        <ActivityPicture
          part={{ ...part, work: before.work }}
          scaleEndMs={scaleEndMs}
          title={says.chartNow}
        />
        <ActivityPicture
          part={{ ...part, work: after.work }}
          machines={change.machines}
          scaleEndMs={scaleEndMs}
          title={says.chartThen}
        />
      </div>
      <HowReckoned lines={says.how} />
    </>
  );
}

/** A simulated run with its figures, which are wanted in several places. */
export interface Simulated {
  readonly run: CellRun;
  readonly summary: CellRunSummary;
}

export interface Runs {
  readonly before: Simulated;
  readonly after: Simulated;
}

export function simulated(simulation: CellSimulation): Simulated {
  const run = simulation.result();
  return { run, summary: summariseRun(run) };
}

function quickRun(plan: CellPlan, seed: number, days: number): Simulated {
  const simulation = new CellSimulation(plan, seed);
  simulation.runUntilDay(days);
  // However short the days, a few trolleys have left.
  simulation.runParts(4 * (plan.trolley + plan.machines));
  return simulated(simulation);
}

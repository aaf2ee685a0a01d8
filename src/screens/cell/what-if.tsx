import { useMemo, useState } from 'preact/hooks';
import { activityChart } from '../../domain/cell/activity-chart';
import { type CellChange, changedWork, noChange } from '../../domain/cell/cell-change';
import { cellCycle } from '../../domain/cell/cell-cycle';
import { changeEffect } from '../../domain/cell/change-effect';
import { moreGoodParts, summariseRun } from '../../domain/cell/compare-cells';
import { CellSimulation } from '../../domain/cell/simulate-cell';
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

/** Days behind an answer that comes with the tap. */
const QUICK_DAYS = 60;

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

  const plans = useMemo(() => {
    const before = planCell(cell, part.work, now);
    const after = planCell(cell, changedWork(part.work, change), { ...setup, machines: change.machines });
    return { before, after };
  }, [cell, part, now, change, setup]);
  const quick = useMemo(() => {
    const run = (plan: typeof plans.before) => {
      const simulation = new CellSimulation(plan, seed);
      simulation.runUntilDay(QUICK_DAYS);
      return simulation.result();
    };
    return { before: run(plans.before), after: run(plans.after) };
  }, [plans, seed]);
  const { before, after } = long ?? quick;
  const summaries = { before: summariseRun(before), after: summariseRun(after) };
  const more = moreGoodParts(before, after);
  const cycles = {
    before: cellCycle(plans.before.work),
    after: cellCycle(plans.after.work, change.machines),
  };
  const isChanged = change !== noChange || setup !== now;
  const effect = changeEffect(cycles.before, cycles.after);
  const scaleEndMs = Math.max(
    activityChart(plans.before.work).roundMs,
    activityChart(plans.after.work, change.machines).roundMs,
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
        effect={effect}
        moreParts={more.difference}
        leadsMs={[summaries.before.meanLeadMs, summaries.after.meanLeadMs]}
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
          <ChangeFigures
            isChanged={isChanged}
            cycles={cycles}
            summaries={summaries}
            runs={[before.machineRuns, after.machineRuns]}
            more={more}
          />
          <DaysPicture before={before} after={isChanged ? after : null} />
          <LongRun
            plans={plans}
            days={before.days}
            seed={seed}
            otherLuck={() => take({ seed: seed + 1 })}
            done={setLong}
          />
        </section>
      </div>
      <div class="cell-sides">
        <ActivityPicture
          part={{ ...part, work: plans.before.work }}
          scaleEndMs={scaleEndMs}
          title={says.chartNow}
        />
        <ActivityPicture
          part={{ ...part, work: plans.after.work }}
          machines={change.machines}
          scaleEndMs={scaleEndMs}
          title={says.chartThen}
        />
      </div>
      <HowReckoned lines={says.how} />
    </>
  );
}

export interface Runs {
  readonly before: ReturnType<CellSimulation['result']>;
  readonly after: ReturnType<CellSimulation['result']>;
}

import { useMemo, useState } from 'preact/hooks';
import { activityChart } from '../../domain/cell/activity-chart';
import { changedWork } from '../../domain/cell/cell-change';
import { cellCycle } from '../../domain/cell/cell-cycle';
import { changeEffect } from '../../domain/cell/change-effect';
import { compareRuns } from '../../domain/cell/compare-cells';
import { simulatedDays } from '../../domain/cell/simulated-days';
import { cellWhatIf as says } from '../../i18n/en/cell-what-if';
import { ActivityPicture } from './activity-picture';
import { ChangeControls } from './change-controls';
import { ChangeFigures } from './change-figures';
import { ChangeSentence } from './change-sentence';
import { DaysPicture } from './days-picture';
import { HowReckoned } from './how-reckoned';
import { LongRun } from './long-run';
import { PartChoice, type PartProps } from './part-choice';
import { planCell, presentSetup } from './plan-cell';
import { daysWithin, LONG, presentRun } from './present-run';
import { TakenChanges } from './taken-changes';
import { activeChanges, nothingTried, type Tried, type TriedChange } from './tried-change';
import type { CellData } from './use-cell';
import { type Runs, useTriedRuns } from './use-tried-runs';

interface Props extends PartProps {
  readonly cell: CellData;
  readonly tried: Tried;
  readonly setTried: (tried: Tried) => void;
}

/** Changes tried on paper: the answer in words, then now beside then. */
export function WhatIf({ cell, parts, part, choose, tried: all, setTried }: Props) {
  const tried = all[part.key] ?? nothingTried;
  const { change, lots, seed } = tried;
  const now = useMemo(() => presentSetup(cell), [cell]);
  const setup = useMemo(() => ({ ...now, ...lots }), [now, lots]);
  const active = activeChanges(tried, part, now);
  const [long, setLong] = useState<Runs | null>(null);

  const before = useMemo(() => planCell(cell, part.work, now), [cell, part, now]);
  const after = useMemo(
    () => planCell(cell, changedWork(part.work, change), { ...setup, machines: change.machines }),
    [cell, part, change, setup],
  );
  const plans = useMemo(() => ({ before, after }), [before, after]);
  const { cycle } = part;
  const cycles = { before: cycle, after: cellCycle(after.work, change.machines) };
  const present = presentRun(cell, part);
  // What the cell does now is simulated once; only what is tried is simulated with every tap.
  const beforeRun = useMemo(
    () => (seed === 1 ? present : simulatedDays(before, seed, present.run.days)),
    [present, before, seed],
  );
  const { runs: quick, settled } = useTriedRuns(beforeRun, plans, seed);
  const runs = long ?? quick;
  const drawn = long ?? settled;
  const drawnPlan = settled.plan;
  const isChanged = active.length > 0;
  const more = useMemo(
    () => compareRuns(runs.before.run, runs.after.run, before.dayMs),
    [runs.before, runs.after, before.dayMs],
  );
  const longDays = daysWithin(LONG, before.dayMs, Math.min(cycle.partMs, cycles.after.partMs));

  const take = (to: Partial<TriedChange>) => {
    setLong(null);
    setTried({ ...all, [part.key]: { ...tried, ...to } });
  };
  // Drawn when the answer has settled: with every tap they would keep it waiting.
  const pictures = useMemo(() => {
    const chart = {
      now: activityChart(before.work),
      tried: activityChart(drawnPlan.work, drawnPlan.machines),
    };
    const scaleEndMs = Math.max(chart.now.roundMs, chart.tried.roundMs);
    return (
      <div class="cell-sides">
        <ActivityPicture work={before.work} scaleEndMs={scaleEndMs} title={says.chartNow} />
        <ActivityPicture
          work={drawnPlan.work}
          machines={drawnPlan.machines}
          scaleEndMs={scaleEndMs}
          title={says.chartThen}
        />
      </div>
    );
  }, [before, drawnPlan]);
  const days = useMemo(
    () => <DaysPicture runs={isChanged ? [drawn.before, drawn.after] : [drawn.before]} />,
    [drawn, isChanged],
  );
  return (
    <>
      <PartChoice parts={parts} part={part} choose={choose} />
      <ChangeSentence
        active={active}
        cycles={cycles}
        effect={changeEffect(cycles.before, cycles.after)}
        plans={plans}
        runs={runs}
        more={more}
      />
      <div class="cell-try">
        <ChangeControls
          part={part}
          change={change}
          setup={setup}
          isChanged={isChanged}
          take={({ change: to, lots: sizes }) =>
            take({ ...(to && { change: to }), ...(sizes && { lots: { ...lots, ...sizes } }) })
          }
          reset={() => take({ change: nothingTried.change, lots: {} })}
        />
        <section class="stack">
          <TakenChanges active={active} take={take} />
          <ChangeFigures isChanged={isChanged} cycles={cycles} runs={runs} dayMs={before.dayMs} more={more} />
          {days}
          <LongRun
            plans={plans}
            days={drawn.before.run.days}
            longDays={longDays}
            seed={seed}
            otherLuck={() => take({ seed: seed + 1 })}
            done={setLong}
          />
        </section>
      </div>
      {part.source && pictures}
      <HowReckoned lines={says.how} />
    </>
  );
}

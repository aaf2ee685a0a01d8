import { useMemo } from 'preact/hooks';
import { setCell } from '../../application/cell/cell-settings';
import { isShown, moreGood } from '../../domain/cell/compare-cells';
import { costOfPart, type MachinesChoice, serveMachines } from '../../domain/cell/serve-machines';
import { type SimulatedRun, simulatedDays } from '../../domain/cell/simulated-days';
import type { CellSettings } from '../../domain/records/shop-fact';
import { cell as words } from '../../i18n/en/cell';
import { cellPeople as says } from '../../i18n/en/cell-people';
import { formatNumber } from '../../i18n/format-number';
import { useApp } from '../app';
import { NumberField } from './number-field';
import { partName } from './part-name';
import { PlainTable } from './plain-table';
import { planCell, presentSetup } from './plan-cell';
import { presentRun } from './present-run';
import { dayMsOf, type ReckonedPart } from './reckon-parts';
import type { CellData } from './use-cell';

const { machines, perHour, operator: operatorWaits, machine: machineWaits, random, cost } = says.machines;
const percent = (share: number) => words.percent(formatNumber(100 * share));
const HOUR_MS = 3_600_000;
/** A further machine that adds less of the output than this is not worth its floor. */
const ADDS = 0.05;

/** How many machines one operator should have, in a sentence; then one, two, three: who waits, and what a part costs. */
export function MoreMachines({ cell, part }: { cell: CellData; part: ReckonedPart }) {
  const { bench, isReadOnly } = useApp();
  const { settings } = cell;
  const { operatorCost = 0, machineCost = 0 } = settings;
  const served = serveMachines(part.cycle);
  const most = served?.choices.length ?? 0;
  const runs = useMemo(() => runsWith(cell, part, most), [cell, part, most]);
  if (!served) return null;
  const { ideal, choices } = served;
  const perHours = runs.map(({ summary }) => (summary.meanGood * HOUR_MS) / dayMsOf(cell));
  const rates = { operator: operatorCost, machine: machineCost };
  const costs = choices.map(({ machines: count }, place) => costOfPart(rates, count, perHours[place]!));
  const isCosted = costs.every((own) => own !== null);
  const cheapest = choices[costs.indexOf(Math.min(...costs.map(Number)))];
  const keep = (to: Partial<CellSettings>) => setCell(bench, { ...settings, ...to });
  return (
    <section class="stack">
      <h2>{answerOf(part, runs, perHours, choices)}</h2>
      <p>
        {says.ideal(formatNumber(ideal, 2))}{' '}
        {isCosted && cheapest && says.cheapest(says.machinesCount(cheapest.machines))}
      </p>
      <PlainTable
        heads={[machines, perHour, operatorWaits, machineWaits, random, ...(isCosted ? [cost] : [])]}
        rows={choices.map((own, place) => [
          own.machines,
          formatNumber(perHours[place]!, 1),
          percent(own.operatorWaits),
          percent(own.machineWaits),
          percent(own.lostAtRandom),
          ...(isCosted ? [formatNumber(costs[place]!, 3)] : []),
        ])}
      />
      <p class="small quiet">{says.machinesNote}</p>
      <div class="row">
        <NumberField
          label={says.operatorRate}
          value={operatorCost}
          disabled={isReadOnly}
          change={(value) => keep({ operatorCost: value })}
        />
        <NumberField
          label={says.machineRate}
          value={machineCost}
          disabled={isReadOnly}
          change={(value) => keep({ machineCost: value })}
        />
      </div>
    </section>
  );
}

/** One machine, two, and so on, simulated with everything that stops the cell. */
function runsWith(cell: CellData, part: ReckonedPart, most: number): SimulatedRun[] {
  const present = presentRun(cell, part);
  return Array.from({ length: most }, (_, place) => {
    const plan = planCell(cell, part.work, { ...presentSetup(cell), machines: place + 1 });
    return place === 0 ? present : simulatedDays(plan, 1, present.run.days);
  });
}

/** As many as each add something, and what the last of them costs in waiting: whether it pays is not said by that. */
function answerOf(
  part: ReckonedPart,
  runs: readonly SimulatedRun[],
  perHours: readonly number[],
  choices: readonly MachinesChoice[],
): string {
  const adds = perHours.map((good, place) => good - (perHours[place - 1] ?? 0));
  const past = adds.findIndex((more, place) => place > 0 && more < ADDS * perHours[place - 1]!);
  const count = past < 0 ? perHours.length : past;
  const name = partName(part);
  if (count === 1) {
    const [one, two] = runs;
    const more = two && isShown(moreGood(one!.run, two.run)) ? adds[1]! : 0;
    return more < 0.05 ? says.oneMachineOnly(name) : says.oneMachine(name, formatNumber(more, 1));
  }
  const { machineWaits: waits } = choices[count - 1]!;
  return says.moreMachines(name, count, formatNumber(adds[count - 1]!, 1), percent(waits));
}

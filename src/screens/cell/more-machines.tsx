import { useState } from 'preact/hooks';
import { serveMachines } from '../../domain/cell/serve-machines';
import { cellPeople as says } from '../../i18n/en/cell-people';
import { formatNumber } from '../../i18n/format-number';
import { PlainTable } from './plain-table';
import type { ReckonedPart } from './reckon-parts';
import { Stepper } from './stepper';

const { machines, perHour, operator: operatorWaits, machine: machineWaits, random, cost } = says.machines;
const percent = (share: number) => `${formatNumber(100 * share)} %`;

/** One operator with one, two, three machines: who waits, and what a part costs. */
export function MoreMachines({ part }: { part: ReckonedPart }) {
  const [operator, setOperator] = useState(0);
  const [machine, setMachine] = useState(0);
  const served = serveMachines(part.cycle, { operator, machine });
  if (!served) return null;
  const { ideal, choices } = served;
  const isCosted = choices[0]!.cost !== null;
  const [cheapest] = [...choices].sort((a, b) => (a.cost ?? 0) - (b.cost ?? 0));
  return (
    <section class="stack">
      <h2>{says.machinesTitle}</h2>
      <p>
        {says.ideal(formatNumber(ideal, 2))}{' '}
        {isCosted && says.cheapest(says.machinesCount(cheapest!.machines))}
      </p>
      <PlainTable
        heads={[machines, perHour, operatorWaits, machineWaits, random, ...(isCosted ? [cost] : [])]}
        rows={choices.map((own) => [
          own.machines,
          formatNumber(own.partsPerHour, 1),
          percent(own.operatorWaits),
          percent(own.machineWaits),
          percent(own.lostAtRandom),
          ...(own.cost === null ? [] : [formatNumber(own.cost, 3)]),
        ])}
      />
      <div class="cell-sides">
        <Stepper label={says.operatorRate} value={operator} low={0} high={500} change={setOperator} />
        <Stepper label={says.machineRate} value={machine} low={0} high={500} change={setMachine} />
      </div>
    </section>
  );
}

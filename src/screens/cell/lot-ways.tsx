import { useMemo, useState } from 'preact/hooks';
import { compareLots, type LotComparison, type LotOut } from '../../domain/cell/compare-lots';
import { decimalMinutes } from '../../i18n/decimal-time';
import { cell as words } from '../../i18n/en/cell';
import { cellLeadTime as says } from '../../i18n/en/cell-lead-time';
import { PlainTable } from './plain-table';
import { presentRun } from './present-run';
import type { ReckonedPart } from './reckon-parts';
import { Stepper } from './stepper';
import type { CellData } from './use-cell';

const ways = ['batch', 'cell', 'line'] as const satisfies readonly (keyof LotComparison)[];
const min = (ms: number) => decimalMinutes(ms, 1);
const rows: readonly (readonly [keyof typeof says.lotRows, (out: LotOut) => string])[] = [
  ['first', ({ firstMs }) => min(firstMs)],
  ['last', ({ lastMs }) => min(lastMs)],
  ['late', ({ lateMs }) => min(lateMs)],
  ['inside', ({ inside }) => String(inside)],
  // A wrong setting is seen on the first finished part: what was begun by then has it too.
  ['faulty', ({ inside }) => String(inside)],
];

/** How long a lot takes as things are; then the same lot, three ways of working it. */
export function LotWays({ cell, part }: { cell: CellData; part: ReckonedPart }) {
  const [lot, setLot] = useState(cell.settings.arrivalLot);
  const compared = useMemo(() => compareLots(part.work, lot, 1), [part, lot]);
  const { flowMs, intervalMs } = presentRun(cell, part).run;
  return (
    <section class="stack">
      <h2>{says.lotTakes(says.parts(lot), words.minutes(min(flowMs + (lot - 1) * intervalMs)))}</h2>
      <Stepper label={says.lotSize} value={lot} low={1} high={200} change={setLot} />
      <PlainTable
        caption={says.lotTitle}
        heads={['', ...ways.map((way) => says.ways[way])]}
        rows={rows.map(([name, show]) => [says.lotRows[name], ...ways.map((way) => show(compared[way]))])}
      />
    </section>
  );
}

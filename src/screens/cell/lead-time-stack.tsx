import type { Hatching } from '../../charts/hatch-patterns';
import { HatchSwatch } from '../../charts/hatch-swatch';
import { LedgerBar } from '../../charts/ledger-bar';
import { processCycleEfficiency } from '../../domain/cell/lead-times';
import { decimalMinutes } from '../../i18n/decimal-time';
import { cell as words } from '../../i18n/en/cell';
import { cellLeadTime as says } from '../../i18n/en/cell-lead-time';
import { formatNumber } from '../../i18n/format-number';
import { useWidth } from '../review/use-width';
import { partName } from './part-name';
import { presentRun } from './present-run';
import type { ReckonedPart } from './reckon-parts';
import type { CellData } from './use-cell';

const terms: readonly (readonly [keyof typeof says.terms, Hatching])[] = [
  ['arrivalLot', 'diagonal'],
  ['flow', 'solid'],
  ['trolley', 'dots'],
];

const min = (ms: number) => words.minutes(decimalMinutes(ms, 1));

/** The lead time as three terms: the lot it came with, the work, the trolley it leaves on; and where value is added. */
export function LeadTimeStack({ cell, part }: { cell: CellData; part: ReckonedPart }) {
  const { ref, width } = useWidth();
  const { run, summary } = presentRun(cell, part);
  const stack = {
    arrivalLot: Math.max(0, summary.meanLeadMs - run.flowMs - run.trolleyMs),
    flow: run.flowMs,
    trolley: run.trolleyMs,
    total: summary.meanLeadMs,
  };
  const [largest] = [...terms].sort(([a], [b]) => stack[b] - stack[a]);
  const share = words.percent(formatNumber((100 * stack[largest![0]]) / stack.total));
  return (
    <>
      <p>{says.stackSays[largest![0]](partName(part), min(stack.total), share)}</p>
      <div ref={ref}>
        {width > 0 && (
          <LedgerBar
            id="cell-stack"
            title={says.stack}
            description={terms.map(([name]) => `${says.terms[name]} ${min(stack[name])}`).join(', ')}
            width={width}
            height={44}
            pieces={terms.map(([name, hatching]) => ({
              name: says.terms[name],
              amount: stack[name],
              hatching,
            }))}
          />
        )}
      </div>
      <p class="row">
        {terms.map(([name, hatching]) => (
          <span key={name} class="number">
            <HatchSwatch id={`cell-term-${name}`} hatching={hatching} /> {says.terms[name]} {min(stack[name])}
          </span>
        ))}
        <strong class="number">= {min(stack.total)}</strong>
      </p>
      <p>{valueSays(cell, part, stack.total)}</p>
    </>
  );
}

/** In what share of its lead time value is added to the part. */
function valueSays({ settings }: CellData, part: ReckonedPart, totalMs: number): string {
  const own = part.work.elements.filter(({ name }) => settings.valueAdding.includes(name));
  if (own.length === 0) return says.pceNone;
  const ms = own.reduce((sum, { meanMs }) => sum + meanMs, 0);
  const share = processCycleEfficiency(ms, totalMs);
  if (share === null) return says.pceWrong;
  const names = words.list(own.map(({ name }) => name));
  return says.pce(
    words.percent(formatNumber(100 * share, 1)),
    min(totalMs),
    words.minutes(decimalMinutes(ms)),
    names,
  );
}

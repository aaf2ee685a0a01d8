import type { Hatching } from '../../charts/hatch-patterns';
import { HatchSwatch } from '../../charts/hatch-swatch';
import { LedgerBar } from '../../charts/ledger-bar';
import { leadTimeStack } from '../../domain/cell/lead-time-stack';
import { cell as words } from '../../i18n/en/cell';
import { cellLeadTime as says } from '../../i18n/en/cell-lead-time';
import { decimalMinutes } from '../../i18n/format-duration';
import { formatNumber } from '../../i18n/format-number';
import { useWidth } from '../review/use-width';
import type { ReckonedPart } from './reckon-parts';
import type { CellData } from './use-cell';

const terms: readonly (readonly [keyof typeof says.terms, Hatching])[] = [
  ['arrivalLot', 'diagonal'],
  ['flow', 'solid'],
  ['trolley', 'dots'],
];

/** The lead time as three terms: the lot it came with, the work, the trolley it leaves on. */
export function LeadTimeStack({ cell, part }: { cell: CellData; part: ReckonedPart }) {
  const { ref, width } = useWidth();
  const { settings, history } = cell;
  const { cycleMs, partMs } = part.cycle;
  const { work } = part;
  const { putDownWith } = settings;
  const stack = leadTimeStack({ work, cycleMs, partMs, putDownWith, lots: settings, days: history.days });
  const [largest] = [...terms].sort(([a], [b]) => stack[b] - stack[a]);
  const share = `${formatNumber((100 * stack[largest![0]]) / stack.total)} %`;
  const min = (ms: number) => words.minutes(decimalMinutes(ms, 1));
  return (
    <section class="stack">
      <h2>{says.stack}</h2>
      <p>{says.stackSays[largest![0]](share)}</p>
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
    </section>
  );
}

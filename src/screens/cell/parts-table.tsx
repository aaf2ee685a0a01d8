import { cellGoverns as says, cell as words } from '../../i18n/en/cell';
import { decimalMinutes } from '../../i18n/format-duration';
import { formatNumber } from '../../i18n/format-number';
import type { PartProps } from './part-choice';
import type { ReckonedPart } from './reckon-parts';

/** Every part of the cell on a line; the part's code chooses the one that is shown in full. */
export function PartsTable({ parts, part, choose, dayMs }: PartProps & { dayMs: number }) {
  const hasOther = parts.some(({ cycle }) => cycle.otherMs > 0);
  const kinds = ['outside', 'inside', 'machine', ...(hasOther ? (['other'] as const) : [])] as const;
  const more = ({ kinds: gains, cycle }: ReckonedPart, kind: (typeof kinds)[number]) => {
    const parts = (gains[kind].gain * dayMs) / cycle.partMs;
    return parts < 0.05 ? says.none : `+${formatNumber(parts, 1)}`;
  };
  return (
    <table class="sheet cell-table">
      <caption class="visually-hidden">{says.partsTitle}</caption>
      <thead>
        <tr>
          <th scope="col" rowSpan={2}>
            {words.part}
          </th>
          <th scope="col" rowSpan={2} class="words">
            {says.governs}
          </th>
          <th scope="col" rowSpan={2}>
            {says.minutesPart}
          </th>
          <th scope="col" rowSpan={2}>
            {says.partsDay}
          </th>
          <th scope="colgroup" colSpan={kinds.length} class="words">
            {says.off}
          </th>
        </tr>
        <tr>
          {kinds.map((kind) => (
            <th key={kind} scope="col">
              {says[kind]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {parts.map((own) => (
          <tr key={own.partCode} class={own === part ? 'cell-chosen' : undefined}>
            <th scope="row">
              <button
                type="button"
                class="choice"
                aria-pressed={own === part}
                onClick={() => choose(own.partCode)}
              >
                {own.partCode || words.noCode}
              </button>
            </th>
            <td class="words">{says.governors[own.cycle.governs]}</td>
            <td>{decimalMinutes(own.cycle.partMs, 3)}</td>
            <td>{formatNumber(dayMs / own.cycle.partMs)}</td>
            {kinds.map((kind) => (
              <td key={kind}>{more(own, kind)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

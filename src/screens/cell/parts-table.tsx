import type { WorkKindOfCell } from '../../domain/cell/second-out';
import { decimalMinutes } from '../../i18n/decimal-time';
import { cellGoverns as says, cell as words } from '../../i18n/en/cell';
import { formatNumber } from '../../i18n/format-number';
import { dayWords } from './day-words';
import type { PartProps } from './part-choice';
import { partName } from './part-name';
import type { ReckonedPart } from './reckon-parts';

interface Props extends PartProps {
  readonly dayMs: number;
  /** Undefined while it is being simulated. */
  readonly goodPerDay: (part: ReckonedPart) => number | undefined;
}

const everyKind: readonly WorkKindOfCell[] = ['outside', 'inside', 'machine', 'other'];

/** Every part of the cell on a line; the part's code chooses the one that is shown in full. */
export function PartsTable({ parts, part, choose, goodPerDay, dayMs }: Props) {
  const kinds = everyKind.filter((kind) => parts.some(({ seconds }) => seconds[kind]));
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
            {says.goodDay}
            <br />
            <span class="small quiet">{dayWords(dayMs)}</span>
          </th>
          <th scope="colgroup" colSpan={kinds.length} class="words">
            {says.second}
          </th>
        </tr>
        <tr>
          {kinds.map((kind) => (
            <th key={kind} scope="col">
              {says.kinds[kind]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {parts.map((own) => {
          const good = goodPerDay(own);
          return (
            <tr key={own.key} class={own === part ? 'cell-chosen' : undefined}>
              <th scope="row">
                <button
                  type="button"
                  class="choice"
                  aria-pressed={own === part}
                  onClick={() => choose(own.key)}
                >
                  {partName(own)}
                </button>
              </th>
              <td class="words">{says.governors[own.cycle.governs]}</td>
              <td>{decimalMinutes(own.cycle.partMs, 3)}</td>
              <td>{good === undefined ? '…' : formatNumber(good)}</td>
              {kinds.map((kind) => (
                <td key={kind}>{own.seconds[kind] ? formatNumber(own.seconds[kind].gained, 2) : '–'}</td>
              ))}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

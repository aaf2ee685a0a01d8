import { AmountBar } from '../../charts/amount-bar';
import type { WorkKindOfCell } from '../../domain/cell/element-effects';
import { cellGoverns as says } from '../../i18n/en/cell';
import { formatNumber } from '../../i18n/format-number';
import { partName } from './part-name';
import type { ReckonedPart } from './reckon-parts';

interface Props {
  readonly part: ReckonedPart;
  /** Good parts a day as it is. */
  readonly perDay: number;
}

/** Kinds whose gain ends where another governs. */
const ending = ['inside', 'machine'] as const satisfies readonly WorkKindOfCell[];
/** A gain that ends below this is none to speak of. */
const SPOKEN_OF = 0.5;

/** What 1 % off each element gives, the largest first, and where a gain ends. */
export function ElementGains({ part, perDay }: Props) {
  const { effects, seconds, cycle } = part;
  const most = effects[0]?.gain ?? 0;
  const gainOf = (gain: number) => (gain * perDay < 0.005 ? says.none : `+${formatNumber(gain * perDay, 2)}`);
  const ends = cycle.hasMachine
    ? ending.flatMap((kind) => {
        const second = seconds[kind];
        const more = second ? (cycle.partMs / second.leastMs - 1) * perDay : 0;
        return more >= SPOKEN_OF ? [says.ends[kind](says.goodParts(formatNumber(more)))] : [];
      })
    : [];
  return (
    <div class="stack">
      <table class="sheet cell-effects">
        <caption>{says.effects(partName(part), effects[0]?.name ?? '')}</caption>
        <thead>
          <tr>
            <th scope="col">{says.element}</th>
            <th scope="col" colSpan={2}>
              {says.more}
            </th>
          </tr>
        </thead>
        <tbody>
          {effects.map(({ name, gain }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{gainOf(gain)}</td>
              <td class="cell-bar">
                <AmountBar amount={gain} most={most} width={110} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {ends.map((end) => (
        <p key={end}>{end}</p>
      ))}
    </div>
  );
}

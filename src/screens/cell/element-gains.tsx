import { AmountBar } from '../../charts/amount-bar';
import type { WorkKindOfCell } from '../../domain/cell/second-out';
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
const BAR = 44;

/** What a second and a tenth less of each element give, in the order of the advice, and where a gain ends. */
export function ElementGains({ part, perDay }: Props) {
  const { effects, seconds, cycle } = part;
  const most = Math.max(...effects.map(({ byTenth }) => byTenth));
  const gainOf = (share: number) =>
    share * perDay < 0.05 ? says.none : `+${formatNumber(share * perDay, 1)}`;
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
        <caption>{says.effects(partName(part))}</caption>
        <thead>
          <tr>
            <th scope="col" rowSpan={2} class="words">
              {says.element}
            </th>
            <th scope="colgroup" colSpan={3} class="words">
              {says.more}
            </th>
          </tr>
          <tr>
            <th scope="col">{says.secondLess}</th>
            <th scope="col" colSpan={2}>
              {says.tenthLess}
            </th>
          </tr>
        </thead>
        <tbody>
          {effects.map(({ name, bySecond, byTenth }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{gainOf(bySecond)}</td>
              <td>{gainOf(byTenth)}</td>
              <td class="cell-bar">
                <AmountBar amount={byTenth} most={most} width={BAR} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="small quiet">{says.effectsNote}</p>
      {ends.map((end) => (
        <p key={end}>{end}</p>
      ))}
    </div>
  );
}

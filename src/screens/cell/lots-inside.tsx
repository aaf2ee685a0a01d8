import { useEffect, useState } from 'preact/hooks';
import type { CellLots } from '../../domain/cell/fold-lots';
import { cellLeadTime as says } from '../../i18n/en/cell-lead-time';
import { formatAge } from '../../i18n/format-age';
import { useApp } from '../app';

/** Ages are in whole minutes. */
const AGE_EVERY_MS = 15_000;

/** What is still in the cell, with its age: left out, the lead time would look short. */
export function LotsInside({ lots: { inside } }: { lots: CellLots }) {
  const { bench } = useApp();
  const { clock } = bench;
  const [nowMs, setNow] = useState(clock.now().wallMs);
  useEffect(() => clock.every(AGE_EVERY_MS, () => setNow(clock.now().wallMs)), [clock]);
  const parts = inside.reduce((sum, own) => sum + own.parts, 0);
  if (parts === 0) return <p class="quiet">{says.nothing}</p>;
  return (
    <table class="sheet">
      <caption>
        {says.inside}: {says.insideOf(says.parts(parts), inside.length)}
      </caption>
      <thead>
        <tr>
          <th scope="col">{says.lot}</th>
          <th scope="col">{says.partsName}</th>
          <th scope="col">{says.came}</th>
        </tr>
      </thead>
      <tbody>
        {inside.map(({ lot, parts: left, arrivedWallMs }, place) => (
          <tr key={`${arrivedWallMs} ${place}`}>
            <td>{lot || says.unnamed}</td>
            <td>{left}</td>
            <td>{formatAge(Math.max(0, nowMs - arrivedWallMs))}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

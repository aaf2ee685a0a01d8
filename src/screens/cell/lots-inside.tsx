import { useEffect, useState } from 'preact/hooks';
import type { CellLots } from '../../domain/cell/fold-lots';
import { cellLeadTime as says } from '../../i18n/en/cell-lead-time';
import { formatAge } from '../../i18n/format-age';
import { useApp } from '../app';
import { PlainTable } from './plain-table';

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
    <PlainTable
      caption={`${says.inside}: ${says.insideOf(says.parts(parts), inside.length)}`}
      heads={[says.lot, says.partsName, says.came]}
      rows={inside.map(({ lot, parts: left, arrivedWallMs }) => [
        lot || says.unnamed,
        left,
        formatAge(Math.max(0, nowMs - arrivedWallMs)),
      ])}
    />
  );
}

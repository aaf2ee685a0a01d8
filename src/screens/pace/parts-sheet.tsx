import { partsOfDay } from '../../domain/day/part-of-day';
import type { Cycle } from '../../domain/turn/turn';
import { ownRecord as own } from '../../i18n/en/own-record';
import { turnSetup as words } from '../../i18n/en/turn-setup';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { useApp } from '../app';
import { leftOutText } from './left-out-text';
import { partTitle } from './part-title';

/** One line a part: how many, how long on average, and what the target was. */
export function PartsSheet({ cycles }: { cycles: readonly Cycle[] }) {
  const lines = partsOfDay(cycles);
  const { parts } = useApp().bench.shop.value;
  const { column } = own;
  return (
    <section class="stack pace-own-wide">
      <h2>{own.byPart}</h2>
      {lines.length === 0 ? (
        <p>{own.noParts}</p>
      ) : (
        <>
          <table class="sheet">
            <thead>
              <tr>
                <th>{column.part}</th>
                <th>{column.n}</th>
                <th>{column.mean}</th>
                <th>{column.target}</th>
                <th>{column.good}</th>
                <th>{column.rework}</th>
                <th>{column.scrap}</th>
              </tr>
            </thead>
            <tbody>
              {lines.map((line) => (
                <tr key={line.part}>
                  <td>{partTitle(parts, line)}</td>
                  <td>
                    {line.n}
                    {line.counted < line.n && <span class="small quiet"> {own.countedOf(line.counted)}</span>}
                  </td>
                  <td>{line.meanMs === null ? '–' : roundedClockFace(line.meanMs)}</td>
                  <td>
                    {line.targetMs === null ? words.targetOf(null) : roundedClockFace(line.targetMs)}
                    {line.targetChanged && <span class="small quiet"> {own.targetChanged}</span>}
                  </td>
                  <td>{line.good}</td>
                  <td>{line.rework}</td>
                  <td>{line.scrap}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <p class="quiet small number">
            {own.netNote} {leftOutText(cycles)}
          </p>
        </>
      )}
    </section>
  );
}

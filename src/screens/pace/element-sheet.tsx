import { elementMeans } from '../../domain/turn/element-means';
import type { Turn } from '../../domain/turn/turn';
import { ownRecord as own } from '../../i18n/en/own-record';
import { roundedClockFace } from '../../i18n/rounded-clock-face';

/** What the elements took, where they were tapped; nothing otherwise. */
export function ElementSheet({ turn }: { turn: Turn }) {
  const means = elementMeans(turn);
  if (means.length === 0) return null;
  return (
    <section class="stack">
      <h2>{own.elementsTitle}</h2>
      <table class="sheet">
        <thead>
          <tr>
            <th>{own.column.element}</th>
            <th>{own.column.n}</th>
            <th>{own.column.mean}</th>
          </tr>
        </thead>
        <tbody>
          {means.map(({ element, n, meanMs }) => (
            <tr key={element}>
              <td>{element}</td>
              <td>{n}</td>
              <td>{roundedClockFace(meanMs)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

import type { LedgerCategory } from '../../domain/turn/ledger-category';
import type { Turn } from '../../domain/turn/turn';
import { wholeSeconds } from '../../domain/turn/whole-seconds';
import { ownRecord as own } from '../../i18n/en/own-record';
import { clockFace } from '../../i18n/format-duration';
import type { CategoryTime } from './ledger-bar';

/** Where the time of the turn went. The lines add up to the elapsed time, as printed. */
export function LedgerSheet({ turn, spent }: { turn: Turn; spent: readonly CategoryTime[] }) {
  // Spans without a gap, in whole seconds: lines, total and the list of stoppages agree as printed.
  const seconds = (wanted: LedgerCategory) =>
    turn.ledger
      .filter(({ category }) => category === wanted)
      .reduce((sum, span) => sum + wholeSeconds(span), 0);
  const share = (ms: number) => own.share(turn.lastAtMs > 0 ? ms / turn.lastAtMs : 0);
  return (
    <section>
      <table class="sheet">
        <thead>
          <tr>
            <th>{own.column.what}</th>
            <th>{own.column.duration}</th>
            <th>{own.column.share}</th>
          </tr>
        </thead>
        <tbody>
          {spent.map(([category, ms]) => (
            <tr key={category}>
              <td>
                <span class={`pace-swatch is-${category}`} aria-hidden="true" /> {own.categories[category]}
              </td>
              <td>{clockFace(seconds(category) * 1_000)}</td>
              <td>{share(ms)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <td>{own.elapsed}</td>
            <td>{clockFace(turn.lastAtMs)}</td>
            <td />
          </tr>
        </tfoot>
      </table>
    </section>
  );
}

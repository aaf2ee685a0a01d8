import type { LedgerCategory } from '../../domain/turn/ledger-category';
import type { Turn } from '../../domain/turn/turn';
import { wholeSeconds } from '../../domain/turn/whole-seconds';
import { pace as words } from '../../i18n/en/pace';
import { clockFace } from '../../i18n/format-duration';
import type { CategoryTime } from './ledger-bar';

/** Where the time of the turn went. The lines add up to the elapsed time, as printed. */
export function LedgerSheet({ turn, spent }: { turn: Turn; spent: readonly CategoryTime[] }) {
  // Spans without a gap, in whole seconds: lines, total and the list of stoppages agree as printed.
  const seconds = (wanted: LedgerCategory) =>
    turn.ledger
      .filter(({ category }) => category === wanted)
      .reduce((sum, span) => sum + wholeSeconds(span), 0);
  const share = (ms: number) => words.share(turn.lastAtMs > 0 ? ms / turn.lastAtMs : 0);
  return (
    <section>
      <table class="sheet">
        <thead>
          <tr>
            <th>{words.column.what}</th>
            <th>{words.column.duration}</th>
            <th>{words.column.share}</th>
          </tr>
        </thead>
        <tbody>
          {spent.map(([category, ms]) => (
            <tr key={category}>
              <td>
                <span class={`pace-swatch is-${category}`} aria-hidden="true" /> {words.categories[category]}
              </td>
              <td>{clockFace(seconds(category) * 1_000)}</td>
              <td>{share(ms)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <td>{words.elapsed}</td>
            <td>{clockFace(turn.lastAtMs)}</td>
            <td />
          </tr>
        </tfoot>
      </table>
    </section>
  );
}

import { HatchSwatch } from '../../charts/hatch-swatch';
import { LedgerBar } from '../../charts/ledger-bar';
import { ledgerLook } from '../../charts/ledger-look';
import { ledgerSeconds } from '../../domain/day/ledger-seconds';
import { ledgerTotals } from '../../domain/turn/ledger-totals';
import type { Turn } from '../../domain/turn/turn';
import { printedMs } from '../../domain/turn/whole-seconds';
import { ledger as words } from '../../i18n/en/ledger';
import { ownRecord as own } from '../../i18n/en/own-record';
import { clockFace } from '../../i18n/format-duration';
import { useWidth } from '../review/use-width';

/** Where the time of the turn, or of one person in it, went, drawn as one bar and told in lines that add up, as printed, to the elapsed time. */
export function LedgerSheet({ turn }: { turn: Turn }) {
  const { ref, width } = useWidth();
  const totals = ledgerTotals(turn.ledger);
  const seconds = ledgerSeconds([turn]);
  const droppedMs = droppedTime(turn);
  const used = ledgerLook.filter(({ category }) => totals[category] > 0);
  const elapsedS = used.reduce((sum, { category }) => sum + seconds[category], 0);
  const pieces = used.map(({ category, hatching }) => ({
    name: words.names[category],
    amount: totals[category],
    hatching,
    time: clockFace(seconds[category] * 1_000),
    share: own.share(seconds[category] / (elapsedS || 1)),
  }));
  return (
    <section class="stack">
      <h2>{words.title}</h2>
      <div ref={ref}>
        {width > 0 && (
          <LedgerBar
            id="own-ledger"
            title={words.pictureTitle}
            description={pieces.map(({ name, time }) => words.piece(name, time)).join(', ')}
            width={width}
            pieces={pieces}
          />
        )}
      </div>
      <table class="sheet">
        <thead>
          <tr>
            <th>{own.column.what}</th>
            <th>{own.column.duration}</th>
            <th>{own.column.share}</th>
          </tr>
        </thead>
        <tbody>
          {pieces.map(({ name, hatching, time, share }) => (
            <tr key={name}>
              <td>
                <HatchSwatch id={`own-swatch-${hatching}`} hatching={hatching} /> {name}
              </td>
              <td>{time}</td>
              <td>{share}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <td>{words.elapsed}</td>
            <td>{clockFace(elapsedS * 1_000)}</td>
            <td />
          </tr>
        </tfoot>
      </table>
      {droppedMs >= 1_000 && <p class="quiet small">{words.dropped(clockFace(droppedMs))}</p>}
    </section>
  );
}

/** Work on the part that was in hand when the turn ended: nobody knows whether it became one. */
function droppedTime({ cycles, ledger, gaps, changes, people, person, status }: Turn): number {
  if (status !== 'ended' || people.at(-1)?.person !== person) return 0;
  const lastDoneMs = cycles.at(-1)?.toMs ?? 0;
  const isAsked = ({ fromMs, toMs }: { fromMs: number; toMs: number }) =>
    [...gaps, ...changes].some((gap) => gap.fromMs < toMs && gap.toMs > fromMs);
  return ledger.reduce(
    (sum, span) =>
      span.category === 'unaccounted' && span.fromMs >= lastDoneMs && !isAsked(span)
        ? sum + printedMs(span)
        : sum,
    0,
  );
}

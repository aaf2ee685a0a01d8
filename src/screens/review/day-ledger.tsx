import { HatchSwatch } from '../../charts/hatch-swatch';
import { LedgerBar } from '../../charts/ledger-bar';
import { ledgerLook } from '../../charts/ledger-look';
import type { DayReview } from '../../domain/day/review-day';
import type { DaySummary } from '../../domain/day/summarise-day';
import { ledger } from '../../i18n/en/ledger';
import { review } from '../../i18n/en/review';
import { reviewWorking as says } from '../../i18n/en/review-working';
import { clockFace } from '../../i18n/format-duration';
import { formatNumber } from '../../i18n/format-number';
import { Figure } from './figure';
import { useWidth } from './use-width';
import type { Working } from './working';

const words = review.ledger;

interface Props {
  readonly day: DayReview;
  /** Null while it is added up. */
  readonly attended: Pick<DaySummary, 'attendedMs' | 'totals'> | null;
  readonly open: (working: Working) => void;
}

/** The time ledger of a day: categories that add up to the elapsed time, drawn as one bar. */
export function DayLedger({ day, attended, open }: Props) {
  const { ref, width } = useWidth();
  const used = ledgerLook.filter(({ category }) => day.totals[category] > 0);
  const elapsedS = used.reduce((sum, { category }) => sum + day.seconds[category], 0);
  const elapsed = clockFace(elapsedS * 1_000);
  const pieces = used.map(({ category, hatching }) => ({
    name: ledger.names[category],
    amount: day.totals[category],
    hatching,
    category,
    time: clockFace(day.seconds[category] * 1_000),
    // Of the seconds that are printed, so that it can be worked out from them.
    percent: formatNumber((100 * day.seconds[category]) / (elapsedS || 1), 1),
  }));
  return (
    <section class="stack" aria-labelledby="review-ledger-title">
      <h2 id="review-ledger-title">{ledger.title}</h2>
      <div ref={ref}>
        {width > 0 && (
          <LedgerBar
            id="review-ledger"
            title={ledger.pictureTitle}
            description={pieces.map(({ name, time }) => ledger.piece(name, time)).join(', ')}
            width={width}
            pieces={pieces}
          />
        )}
      </div>
      <table class="sheet review-sheet">
        <thead>
          <tr>
            <th scope="col">{words.category}</th>
            <th scope="col">{words.time}</th>
            <th scope="col">{words.share}</th>
          </tr>
        </thead>
        <tbody>
          {pieces.map((piece) => (
            <tr key={piece.category}>
              <th scope="row" class="words">
                <HatchSwatch id={`review-swatch-${piece.category}`} hatching={piece.hatching} /> {piece.name}
              </th>
              <td>
                <Figure
                  open={open}
                  working={() => ({
                    title: piece.name,
                    says: says.category.says[piece.category],
                    formula: says.category.formula,
                    put: says.category.put(piece.time, elapsed, piece.percent),
                  })}
                >
                  {piece.time}
                </Figure>
              </td>
              <td>{piece.percent} %</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <td>{ledger.elapsed}</td>
            <td>
              <Figure
                open={open}
                working={() => ({
                  title: says.elapsed.title,
                  says: says.elapsed.says,
                  formula: says.elapsed.formula,
                  put: `${pieces.map((piece) => piece.time).join(' + ')} = ${elapsed}`,
                })}
              >
                {elapsed}
              </Figure>
            </td>
            <td>{pieces.length > 0 ? `${formatNumber(100, 1)} %` : ''}</td>
          </tr>
        </tfoot>
      </table>
      {attended && day.elapsedMs - attended.attendedMs >= 1_000 && (
        <p class="small quiet">{attendedText(day, attended, elapsedS)}</p>
      )}
    </section>
  );
}

/** How attended time follows from elapsed time, and what of the meals stands in other lines of the ledger. */
function attendedText(
  day: DayReview,
  { attendedMs, totals }: NonNullable<Props['attended']>,
  elapsedS: number,
) {
  // The meals are as long as the calendar has them: what the cut of seconds leaves over is attended.
  const mealS = Math.floor((day.elapsedMs - attendedMs + 1) / 1_000);
  const untapped = ledgerLook
    .filter(
      ({ category }) => category !== 'planned-break' && day.totals[category] - totals[category] >= 1_000,
    )
    .map(({ category }) =>
      ledger.piece(ledger.names[category], clockFace(day.totals[category] - totals[category])),
    );
  const [attended, elapsed, meals] = [elapsedS - mealS, elapsedS, mealS].map((s) => clockFace(1_000 * s));
  const said = words.attended(attended!, elapsed!, meals!);
  return untapped.length > 0 ? `${said} ${words.untapped(untapped.join(', '))}` : said;
}

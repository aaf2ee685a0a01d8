import type { Hatching } from '../../charts/hatch-patterns';
import { HatchSwatch } from '../../charts/hatch-swatch';
import { LedgerBar } from '../../charts/ledger-bar';
import type { DayReview } from '../../domain/day/review-day';
import type { LedgerCategory } from '../../domain/turn/ledger-category';
import { review } from '../../i18n/en/review';
import { reviewWorking as says } from '../../i18n/en/review-working';
import { clockFace } from '../../i18n/format-duration';
import { formatNumber } from '../../i18n/format-number';
import { Figure } from './figure';
import { roundedShares } from './rounded-shares';
import { useWidth } from './use-width';
import type { Working } from './working';

const words = review.ledger;

/** In the order in which they are read: work first, what nobody can say last. */
const order: readonly { category: LedgerCategory; hatching: Hatching }[] = [
  { category: 'cycle', hatching: 'solid' },
  { category: 'set-up', hatching: 'diagonal' },
  { category: 'rework', hatching: 'dots' },
  { category: 'stoppage', hatching: 'cross' },
  { category: 'called-away', hatching: 'level' },
  { category: 'planned-break', hatching: 'upright' },
  { category: 'unaccounted', hatching: 'blank' },
];

/** The time ledger of a day: categories that add up to the elapsed time, drawn as one bar. */
export function DayLedger({ day, open }: { day: DayReview; open: (working: Working) => void }) {
  const { ref, width } = useWidth();
  const used = order.filter(({ category }) => day.totals[category] > 0);
  const elapsed = clockFace(used.reduce((sum, { category }) => sum + day.seconds[category], 0) * 1_000);
  const percents = roundedShares(
    used.map(({ category }) => (100 * day.totals[category]) / (day.elapsedMs || 1)),
    1,
  );
  const pieces = used.map(({ category, hatching }, place) => ({
    name: words.names[category],
    amount: day.totals[category],
    hatching,
    category,
    time: clockFace(day.seconds[category] * 1_000),
    percent: formatNumber(percents[place]!, 1),
  }));
  return (
    <section class="stack" aria-labelledby="review-ledger-title">
      <h2 id="review-ledger-title">{words.title}</h2>
      <div class="review-picture" ref={ref}>
        {width > 0 && (
          <LedgerBar
            id="review-ledger"
            title={words.pictureTitle}
            description={pieces.map(({ name, time }) => words.piece(name, time)).join(', ')}
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
            <td>{words.elapsed}</td>
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
            <td>{pieces.length > 0 ? '100.0 %' : ''}</td>
          </tr>
        </tfoot>
      </table>
    </section>
  );
}

import { AmountBar } from '../../charts/amount-bar';
import type { LostCost } from '../../domain/day/lost-cost';
import type { DayReview } from '../../domain/day/review-day';
import { NOT_STATED } from '../../domain/turn/turn';
import { ledger } from '../../i18n/en/ledger';
import { review } from '../../i18n/en/review';
import { reviewDayMore } from '../../i18n/en/review-day-more';
import { reviewWorking as says } from '../../i18n/en/review-working';
import { clockFace } from '../../i18n/format-duration';
import { Figure } from './figure';
import { reasonName } from './reason-name';
import type { Working } from './working';

const words = review.lost;
const BAR_PX = 110;

interface Props {
  readonly day: DayReview;
  /** What the same stoppages cost in output, where that is known. */
  readonly costs: readonly LostCost[];
  readonly open: (working: Working) => void;
}

/** Time stopped by reason, as a column of bars; what nobody explained is last, and in outline. */
export function DayLostTime({ day, costs, open }: Props) {
  // A column that says the same as the one beside it says nothing.
  const isCheaper = costs.some(({ lostMs, costMs }) => lostMs - costMs >= 1_000);
  // Rounded once, as the time beside it: no cost is printed that is longer than what it is the cost of.
  const costOf = ({ reason, seconds }: DayReview['lost'][number]) => {
    const cost = costs.find((each) => each.reason === reason);
    return cost ? Math.max(0, seconds - Math.round((cost.lostMs - cost.costMs) / 1_000)) : seconds;
  };
  const most = Math.max(0, ...day.lost.map(({ lostMs }) => lostMs));
  const besides = (['set-up', 'planned-break'] as const).filter((category) => day.seconds[category] > 0);
  return (
    <section class="stack" aria-labelledby="review-lost-title">
      <h2 id="review-lost-title">{words.title}</h2>
      {day.lost.length === 0 ? (
        <p>{day.lostUnknown === 0 ? words.none : words.unknown(day.lostUnknown)}</p>
      ) : (
        <table class="sheet review-sheet">
          <thead>
            <tr>
              <th scope="col">{words.reason}</th>
              <th scope="col" class="words" colSpan={2}>
                {words.time}
              </th>
              {isCheaper && <th scope="col">{reviewDayMore.cost.cost}</th>}
              <th scope="col">{words.count}</th>
            </tr>
          </thead>
          <tbody>
            {day.lost.map((lost) => (
              <tr key={lost.reason}>
                <th scope="row" class="words">
                  {reasonName(lost)}
                </th>
                <td class="words review-bar">
                  <AmountBar
                    amount={lost.lostMs}
                    most={most}
                    width={BAR_PX}
                    isNeutral={lost.reason === NOT_STATED}
                  />
                </td>
                <td>
                  <Figure
                    open={open}
                    working={() => ({
                      title: reasonName(lost),
                      says: says.lost.says,
                      formula: says.lost.formula,
                      put: says.lost.put(lost.count, time(lost.seconds)),
                    })}
                  >
                    {time(lost.seconds)}
                  </Figure>
                </td>
                {isCheaper && <td>{time(costOf(lost))}</td>}
                <td>{lost.count}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <td>{words.all}</td>
              <td />
              <td>{time(day.lost.reduce((sum, { seconds }) => sum + seconds, 0))}</td>
              {isCheaper && <td>{time(day.lost.reduce((sum, each) => sum + costOf(each), 0))}</td>}
              <td>{day.lost.reduce((sum, { count }) => sum + count, 0)}</td>
            </tr>
          </tfoot>
        </table>
      )}
      {day.lost.length > 0 && day.lostUnknown > 0 && <p>{words.unknownToo(day.lostUnknown)}</p>}
      {besides.length > 0 && (
        <p>
          {words.besides}{' '}
          {besides
            .map((category) => words.besidesLine(ledger.names[category], time(day.seconds[category])))
            .join(', ')}
          .
        </p>
      )}
      {day.lost.some(({ reason }) => reason === NOT_STATED) && <p class="small quiet">{words.note}</p>}
    </section>
  );
}

function time(seconds: number): string {
  return clockFace(seconds * 1_000);
}

import { dayFigures } from '../../../domain/day/day-figures';
import { firstPassYield } from '../../../domain/day/first-pass-yield';
import type { DaySummary } from '../../../domain/day/summarise-day';
import { reviewDayMore } from '../../../i18n/en/review-day-more';
import { formatNumber } from '../../../i18n/format-number';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';

const words = reviewDayMore.parts;

/** Each part's three times under their names, and how many were good the first time. */
export function PartTimes({ day }: { day: DaySummary }) {
  const { netMs, grossMs, perGoodMs } = dayFigures(day);
  return (
    <>
      <table class="sheet review-sheet">
        <thead>
          <tr>
            {[words.part, words.captured, words.net, words.gross, words.perGood, words.yield].map((name) => (
              <th scope="col" key={name}>
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {day.parts.map((part) => {
            const good = part.good + part.rework;
            return (
              <tr key={part.part}>
                <th scope="row" class="words">
                  {part.partCode}
                </th>
                <td>
                  {part.counted} / {part.n}
                </td>
                <td>{time(part.counted > 0 ? part.netMs / part.counted : null)}</td>
                <td>{time(part.counted > 0 ? part.grossMs / part.counted : null)}</td>
                <td>{time(good > 0 ? part.attendedMs / good : null)}</td>
                <td>{yieldText(part.good, part.n)}</td>
              </tr>
            );
          })}
        </tbody>
        <tfoot>
          <tr>
            <td>{words.all}</td>
            <td>
              {day.counted} / {day.done}
            </td>
            <td>{time(netMs)}</td>
            <td>{time(grossMs)}</td>
            <td>{time(perGoodMs)}</td>
            <td>{yieldText(day.firstTime, day.done)}</td>
          </tr>
        </tfoot>
      </table>
      <p class="small quiet">{words.note}</p>
    </>
  );
}

function time(ms: number | null): string {
  return ms === null ? '–' : roundedClockFace(ms);
}

function yieldText(good: number, done: number): string {
  const found = firstPassYield(good, done);
  if (!found) return '–';
  const percent = (share: number) => formatNumber(100 * share, 1);
  return words.yieldValue(percent(found.share), percent(found.lower), percent(found.upper));
}

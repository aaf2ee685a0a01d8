import type { TurnTold } from '../../application/turn/enter-turn';
import { localDay } from '../../domain/day/local-day';
import { offsetMin } from '../../domain/shop/wall-time';
import { enterTurn as words } from '../../i18n/en/enter-turn';
import { review } from '../../i18n/en/review';
import { formatDay } from '../../i18n/format-day';
import { reasonText } from '../pace/reason-text';
import { timeOfDay } from '../pace/time-of-day';

const MINUTE_MS = 60_000;

/** What will be written of a turn that is told afterwards, before it is. */
export function EnteredReview({ told, zone }: { told: TurnTold; zone: string }) {
  const { person, fromWallMs, toWallMs, lines, stops } = told;
  const at = (wallMs: number) => ({ wallMs, offsetMin: offsetMin(wallMs, zone) });
  const minutes = (ms: number) => Math.round(ms / MINUTE_MS);
  const lasted = minutes(toWallMs - fromWallMs);
  // What has its place in the turn is a meal of the calendar; nobody typed it.
  const meals = stops.filter(({ fromMs }) => fromMs !== undefined);
  const typed = stops.filter(({ fromMs }) => fromMs === undefined);
  const mealMin = minutes(meals.reduce((sum, { lostMs }) => sum + lostMs, 0));
  return (
    <div class="panel" role="status">
      <p>
        <strong>{words.willWrite}</strong>
      </p>
      <ul>
        <li>
          {words.span(
            person,
            formatDay(localDay(at(fromWallMs))),
            timeOfDay(at(fromWallMs)),
            timeOfDay(at(toWallMs)),
            review.hours(Math.floor(lasted / 60), lasted % 60),
          )}
        </li>
        {lines.map(({ partCode, done, rework, scrap }, place) => (
          <li key={`${place}`}>{words.made(partCode, done, rework, scrap)}</li>
        ))}
        {typed.map(({ reason, label, lostMs }) => (
          <li key={reason}>{words.stoppedFor(reasonText({ reason, label }), minutes(lostMs))}</li>
        ))}
        {typed.length === 0 && <li>{words.noStops}</li>}
        {mealMin > 0 && <li>{words.meals(mealMin)}</li>}
      </ul>
    </div>
  );
}

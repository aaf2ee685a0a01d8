import { type BoardHour, hourBoard } from '../../../domain/day/hour-board';
import type { AttendedTurn } from '../../../domain/day/summarise-day';
import { decimalMinutes } from '../../../i18n/decimal-time';
import { reviewDayMore } from '../../../i18n/en/review-day-more';
import { formatNumber } from '../../../i18n/format-number';
import { Figure } from '../figure';
import { reasonName } from '../reason-name';
import { roundedShares } from '../rounded-shares';
import type { Working } from '../working';

const words = reviewDayMore.hours;
const MINUTE_MS = 60_000;

/** The production analysis board of the day, in earned minutes. */
export function HourTable({
  turns,
  setUpStandardMs,
  open,
}: {
  turns: readonly AttendedTurn[];
  setUpStandardMs: number | null;
  open: (working: Working) => void;
}) {
  const hours = hourBoard(turns, setUpStandardMs);
  const planned = roundedShares(
    hours.map(({ plannedMs }) => plannedMs / MINUTE_MS),
    0,
  );
  const earned = roundedShares(
    hours.map(({ earnedMs }) => earnedMs / MINUTE_MS),
    0,
  );
  return (
    <>
      <table class="sheet review-sheet">
        <thead>
          <tr>
            <th scope="col">{words.hour}</th>
            <th scope="col">{words.plan}</th>
            <th scope="col">{words.earned}</th>
            <th scope="col" class="words">
              {words.difference}
            </th>
            <th scope="col">{words.parts}</th>
            <th scope="col" class="words">
              {words.cause}
            </th>
          </tr>
        </thead>
        <tbody>
          {hours.map((hour, place) => (
            <tr key={hour.fromWallMs}>
              <th scope="row">{clock(hour.fromWallMs, hour.offsetMin)}</th>
              <td>{planned[place]}</td>
              <td>
                {hour.isSilent ? (
                  '–'
                ) : (
                  <Figure open={open} working={() => earnedWorking(hour)}>
                    <strong>{earned[place]}</strong>
                  </Figure>
                )}
              </td>
              <td class="words">{hour.isSilent ? words.silent : side(hour)}</td>
              <td>{hour.goodParts}</td>
              <td class="words">
                {hour.cause &&
                  words.lost(reasonName(hour.cause), formatNumber(hour.cause.lostMs / MINUTE_MS, 1))}
              </td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <td>{words.all}</td>
            <td>{planned.reduce((sum, each) => sum + each, 0)}</td>
            <td>{earned.reduce((sum, each) => sum + each, 0)}</td>
            <td class="words">{hours.length > 0 && side(hours.at(-1)!)}</td>
            <td>{hours.reduce((sum, { goodParts }) => sum + goodParts, 0)}</td>
            <td />
          </tr>
        </tfoot>
      </table>
      <p class="small quiet">
        {words.note} {hours.length > 0 && efficiencyText(hours.at(-1)!)}
      </p>
    </>
  );
}

function earnedWorking({ fromWallMs, offsetMin, earnedMs, setUpMs }: BoardHour): Working {
  return {
    title: words.earnedTitle(clock(fromWallMs, offsetMin)),
    says: words.earnedSays,
    formula: words.earnedFormula,
    put: words.earnedPut(
      decimalMinutes(earnedMs - setUpMs),
      decimalMinutes(setUpMs),
      decimalMinutes(earnedMs),
    ),
  };
}

/** The same figure as the day's own, so that nobody takes the plan for another measure. */
function efficiencyText({ earnedSoFarMs, plannedSoFarMs }: BoardHour): string {
  if (plannedSoFarMs === 0) return '';
  return words.efficiency(
    formatNumber(Math.round(earnedSoFarMs / MINUTE_MS)),
    formatNumber(Math.round(plannedSoFarMs / MINUTE_MS)),
    formatNumber((100 * earnedSoFarMs) / plannedSoFarMs, 1),
  );
}

function side({ earnedSoFarMs, plannedSoFarMs }: { earnedSoFarMs: number; plannedSoFarMs: number }): string {
  const minutes = Math.round((earnedSoFarMs - plannedSoFarMs) / MINUTE_MS);
  if (minutes === 0) return words.level;
  return minutes > 0 ? words.ahead(formatNumber(minutes)) : words.behind(formatNumber(-minutes));
}

/** The shop's own clock, as it stood in that hour. */
function clock(wallMs: number, offsetMin: number): string {
  return new Date(wallMs + offsetMin * MINUTE_MS).toISOString().slice(11, 16);
}

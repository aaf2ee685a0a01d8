import type { DayReview } from '../../domain/day/review-day';
import { review as words } from '../../i18n/en/review';
import { formatDay } from '../../i18n/format-day';
import { formatNumber } from '../../i18n/format-number';
import { DayLedger } from './day-ledger';
import { DayLostTime } from './day-lost-time';
import { DayPicture } from './day-picture';
import { DaySheet } from './day-sheet';
import { DayToSettle } from './day-to-settle';
import { sideOfTarget } from './side-of-target';
import type { Working } from './working';

interface Props {
  readonly day: DayReview;
  readonly open: (working: Working) => void;
}

/** One day: its parts beside their targets, the figures behind them, and where the time went. */
export function OneDay({ day, open }: Props) {
  const hasParts = day.parts.length > 0;
  return (
    <>
      <div class="stack review-head">
        <h1>
          <span class="review-for-paper">{words.together.forPaper(formatDay(day.day))}</span>
          {verdict(day)}
        </h1>
        {hasParts && <p>{words.summary({ ...day, elapsed: elapsedInWords(day.elapsedMs) })}</p>}
        {!hasParts && <p>{day.elapsedMs > 0 ? words.timeBelow : words.noTime}</p>}
        {day.openTurns > 0 && <p class="quiet">{words.stillOpen(day.openTurns)}</p>}
      </div>
      {hasParts && <DayPicture day={day} />}
      {hasParts && <DaySheet day={day} open={open} />}
      {day.elapsedMs > 0 && (
        <div class="review-time">
          <DayLedger day={day} open={open} />
          <DayLostTime day={day} open={open} />
        </div>
      )}
      <DayToSettle key={day.day} day={day.day} />
    </>
  );
}

/** The day in one sentence, each part measured by its own target. */
function verdict({ parts, against }: DayReview): string {
  if (parts.length === 0) return words.together.noParts;
  if (!against) return words.together.noTarget;
  const side = sideOfTarget(against.share);
  if (side === 'level') return words.together.level;
  return words.together[side](formatNumber(Math.abs(Math.round(against.share * 100) - 100)));
}

function elapsedInWords(ms: number): string {
  const minutes = Math.round(ms / 60_000);
  return words.hours(Math.floor(minutes / 60), minutes % 60);
}

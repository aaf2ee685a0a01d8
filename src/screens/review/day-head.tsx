import { dayFigures } from '../../domain/day/day-figures';
import { meanTarget } from '../../domain/day/mean-target';
import type { DayReview } from '../../domain/day/review-day';
import type { DaySummary } from '../../domain/day/summarise-day';
import { review as words } from '../../i18n/en/review';
import { formatDay } from '../../i18n/format-day';
import { clockFace } from '../../i18n/format-duration';
import { formatNumber } from '../../i18n/format-number';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { againstTargetText } from './against-target-text';
import { SETTLE_TITLE_ID } from './day-to-settle';
import { lengthText } from './length-text';
import { reasonName } from './reason-name';

interface Props {
  readonly day: DayReview;
  /** The days that were read, this one among them. */
  readonly days: readonly DaySummary[];
  /** How many are to be settled. */
  readonly questions: number;
}

/** What the day was, in one sentence, and under it what it was made of. */
export function DayHead({ day, days, questions }: Props) {
  const hasParts = day.parts.length > 0;
  const [most] = day.lost;
  const mix = meanTarget(day, days);
  const summary = days.find((each) => each.day === day.day);
  const efficiency = summary ? dayFigures(summary).efficiency : null;
  const percent = efficiency === null ? null : formatNumber(100 * efficiency, 1);
  return (
    <div class="stack review-head">
      <h1>
        <span class="review-for-paper">{words.head.forPaper(formatDay(day.day))}</span>
        {answer(day, percent)}
      </h1>
      {percent !== null && day.against && (
        <p>{words.head.workAlone(day.against.n, day.done, againstTargetText(day.against.share))}</p>
      )}
      {hasParts && <p>{words.head.made({ ...day, elapsed: lengthText(day.elapsedMs) })}</p>}
      {mix && <p>{words.head.mix[mix.side](roundedClockFace(mix.meanMs), roundedClockFace(mix.usualMs))}</p>}
      {most && day.lost.length > 1 && (
        <p>{words.head.mostLost(reasonName(most), clockFace(most.seconds * 1_000))}</p>
      )}
      {questions > 0 && (
        <div class="row no-print">
          <button type="button" class="button" onClick={showQuestions}>
            {words.head.questions(questions)}
          </button>
        </div>
      )}
      {day.openTurns > 0 && <p class="quiet">{words.head.stillOpen(day.openTurns)}</p>}
    </div>
  );
}

function showQuestions(): void {
  const title = document.getElementById(SETTLE_TITLE_ID);
  title?.scrollIntoView({ block: 'start' });
  title?.focus({ preventScroll: true });
}

/**
 * Efficiency where it is known: hard days and easy ones read alike by it, and all attended time is in it. Else what the
 * parts took that count, with how many of the day those are.
 */
function answer(day: DayReview, efficiency: string | null): string {
  const { done, entered, turns, parts, counted, against, elapsedMs } = day;
  if (turns === 0) return words.head.takenAway;
  if (elapsedMs === 0) return words.head.noTime;
  const lostText = lostInWords(day);
  if (parts.length === 0) return words.head.noParts(lostText);
  if (against) {
    return efficiency === null
      ? words.head.took(against.n, done, againstTargetText(against.share), lostText)
      : words.head.answer(efficiency, lostText);
  }
  if (entered === done) return words.head.entered(done, efficiency, lostText);
  return counted === 0 && parts.some(({ targetMs }) => targetMs !== null)
    ? words.head.noneCounted(lostText)
    : words.head.noTarget(lostText);
}

/** What was lost, and what nobody can say of; of a turn that was written down, nothing told is not nothing lost. */
function lostInWords({ lost, lostUnknown, seconds }: DayReview): string {
  const lostMs = 1_000 * lost.reduce((sum, each) => sum + each.seconds, 0);
  if (lostMs === 0 && lostUnknown > 0) return words.head.lostUnknown;
  const text = lostMs === 0 ? words.head.nothingLost : words.head.lost(lengthText(lostMs));
  if (seconds.unaccounted < 60) return text;
  return `${text}, ${words.head.unaccounted(lengthText(1_000 * seconds.unaccounted))}`;
}

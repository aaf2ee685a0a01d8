import { ratingsJudged } from '../../domain/study/ratings-judged';
import type { Study } from '../../domain/study/study';
import type { StudySummary } from '../../domain/study/summarise-study';
import { study as allWords } from '../../i18n/en/study';
import { studySheet as words } from '../../i18n/en/study-sheet';
import { formatNumber } from '../../i18n/format-number';
import { ProgressLine } from './progress-line';
import { RatingNote } from './rating-note';
import type { TimeWords } from './time-words';

interface Props {
  readonly study: Study;
  readonly summary: StudySummary;
  readonly time: TimeWords;
  /** Why there is no standard time, when there is none. */
  readonly reason: string;
  /** Elements of the method without a single reading. */
  readonly unseen: readonly string[];
  /** The clock agrees and the work stood still. */
  readonly isUsable: boolean;
}

/** The answer to the screen's question, before everything that leads to it. */
export function SheetAnswer({ study, summary, time, reason, unseen, isUsable }: Props) {
  const { standardTimeMs, piecesPerHour, terms, machineMs } = summary;
  if (standardTimeMs === null || piecesPerHour === null) {
    return (
      <p class="study-answer">
        {words.answer.none} {reason}
      </p>
    );
  }
  const percent = (pct: number) => `${formatNumber(pct, Number.isInteger(pct) ? 0 : 2)} %`;
  const allowance = words.answer.allowance(
    percent(terms.allowancePct),
    allWords.terms.bases[terms.basis],
    machineMs > 0 ? percent(terms.machineAllowancePct) : null,
  );
  if (!isUsable) {
    return (
      <p>
        {words.answer.unusable} <span class="number">{time.said(standardTimeMs)}</span>,{' '}
        {words.answer.beside(allowance, formatNumber(piecesPerHour, 1))}
      </p>
    );
  }
  return (
    <>
      <p class="study-answer">
        {unseen.length > 0 ? words.answer.without(allWords.and(unseen)) : words.answer.ofStudy}{' '}
        <strong class="number">{time.said(standardTimeMs)}</strong>{' '}
        <span class="quiet">{words.answer.beside(allowance, formatNumber(piecesPerHour, 1))}</span>{' '}
        <ProgressLine study={study} />
      </p>
      <RatingNote ratings={ratingsJudged(study.readings)} />
    </>
  );
}

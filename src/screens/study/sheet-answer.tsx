import type { StudySummary } from '../../domain/study/summarise-study';
import { study as allWords } from '../../i18n/en/study';
import { studySheet as words } from '../../i18n/en/study-sheet';
import { formatNumber } from '../../i18n/format-number';
import type { TimeWords } from './time-words';

interface Props {
  readonly summary: StudySummary;
  readonly time: TimeWords;
  /** Why there is no standard time, when there is none. */
  readonly reason: string;
}

/** The answer to the screen's question, before everything that leads to it. */
export function SheetAnswer({ summary, time, reason }: Props) {
  const { standardTimeMs, piecesPerHour, terms } = summary;
  if (standardTimeMs === null || piecesPerHour === null) {
    return (
      <p class="study-answer">
        {words.answer.none} {reason}
      </p>
    );
  }
  const pct = formatNumber(terms.allowancePct, Number.isInteger(terms.allowancePct) ? 0 : 2);
  const allowance = `${pct} % ${allWords.terms.bases[terms.basis]}`;
  return (
    <p class="study-answer">
      {words.answer.name} <strong class="number">{time.said(standardTimeMs)}</strong>{' '}
      <span class="quiet">{words.answer.beside(allowance, formatNumber(piecesPerHour, 1))}</span>
    </p>
  );
}

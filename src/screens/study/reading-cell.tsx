import type { Reading } from '../../domain/study/study';
import { studySheet } from '../../i18n/en/study-sheet';
import { causeLetter, causeWords } from './cause-words';
import type { TimeWords } from './time-words';

const words = studySheet.observation;

interface Props {
  readonly reading: Reading;
  /** Foreign elements that fell into it. */
  readonly letters: readonly string[];
  readonly isFlagged: boolean;
  readonly time: TimeWords;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
}

/**
 * A reading as it stands on paper: the rating left of it, in brackets when it stood from before, † when it was
 * corrected; struck through and still legible when left out.
 */
export function ReadingCell({ reading, letters, isFlagged, time, isOpen, onToggle }: Props) {
  const { judged, firstRatingPct, row } = reading;
  const { element, cycle, observedMs, ratingPct, excluded, carried } = row;
  return (
    <button type="button" class="study-reading" aria-expanded={isOpen} onClick={onToggle}>
      <span class="visually-hidden">{words.where(element, cycle)} </span>
      {observedMs !== null && (
        <span class="study-reading-rating">
          {judged === false && firstRatingPct === undefined ? `(${ratingPct})` : ratingPct}
          {firstRatingPct !== undefined && '†'}{' '}
        </span>
      )}
      {observedMs === null ? (
        words.missed
      ) : (
        <span class={excluded === null ? '' : 'struck'}>{time.reading(observedMs)}</span>
      )}
      {carried.clock_flag && '*'}
      {isFlagged && (
        <sup class="study-reading-letter">
          ?<span class="visually-hidden"> {words.isFlagged}</span>
        </sup>
      )}
      {excluded !== null && (
        <sup>
          {causeLetter(excluded)}
          <span class="visually-hidden"> {words.out(causeWords(excluded))}</span>
        </sup>
      )}
      {carried.note && (
        <sup>
          {words.remarkLetter}
          <span class="visually-hidden"> {carried.note}</span>
        </sup>
      )}
      {letters.length > 0 && (
        <sup class="study-reading-letter">
          <span class="visually-hidden"> {words.inside} </span>
          {letters.join(' ')}
        </sup>
      )}
    </button>
  );
}

import { useState } from 'preact/hooks';
import { study } from '../../i18n/en/study';
import { studySheet } from '../../i18n/en/study-sheet';
import { HIGHEST_RATING, LOWEST_RATING } from './rating-pad';

const words = studySheet.reading;
const STEP = 5;

interface Props {
  readonly ratingPct: number;
  readonly disabled: boolean;
  readonly onKeep: (ratingPct: number) => void;
}

/** A rating judged again, in steps of five; nothing changes until it is kept. */
export function RatingCorrection({ ratingPct, disabled, onKeep }: Props) {
  const [rating, setRating] = useState(ratingPct);
  return (
    <div class="row">
      <span>{words.rating}</span>
      <button
        type="button"
        class="button number"
        aria-label={words.lower}
        disabled={disabled || rating - STEP < LOWEST_RATING}
        onClick={() => setRating(rating - STEP)}
      >
        {study.observe.lower}
      </button>
      <strong class="number study-rating-now" role="status">
        {rating}
      </strong>
      <button
        type="button"
        class="button number"
        aria-label={words.higher}
        disabled={disabled || rating + STEP > HIGHEST_RATING}
        onClick={() => setRating(rating + STEP)}
      >
        {study.observe.higher}
      </button>
      <button
        type="button"
        class="button strong"
        disabled={disabled || rating === ratingPct}
        onClick={() => onKeep(rating)}
      >
        {words.keepRating(rating)}
      </button>
    </div>
  );
}

import { study } from '../../i18n/en/study';
import { TimingButton } from '../timing-button';

const words = study.observe;

export const LOWEST_RATING = 50;
export const HIGHEST_RATING = 150;
const STEP = 5;
/** Beyond these a rating is rare: reached by steps. */
const direct = [75, 80, 85, 90, 95, 100, 105, 110, 115, 120, 125];

interface Props {
  readonly rating: number;
  readonly onRate: (ratingPct: number) => void;
  /** Why nothing can be rated now; null when it can. */
  readonly lock: 'machine' | 'foreign' | 'idle' | null;
}

/** Rate first, then tap: the rating chosen stands until another is chosen. */
export function RatingPad({ rating, onRate, lock }: Props) {
  const isLocked = lock !== null;
  const step = (by: number) => onRate(Math.min(HIGHEST_RATING, Math.max(LOWEST_RATING, rating + by)));
  return (
    <fieldset class="study-pad">
      <legend class="visually-hidden">{words.rating}</legend>
      <p class="study-pad-shown" role="status">
        {lock === 'machine' && <span class="study-pad-lock">{words.machineLocked}</span>}
        {lock === 'foreign' && <span class="study-pad-lock">{words.foreignLocked}</span>}
        {(lock === null || lock === 'idle') && (
          <>
            <span class="small">{words.rating}</span>
            <strong class="number">{rating}</strong>
          </>
        )}
      </p>
      {direct.slice(0, 6).map(choice)}
      <TimingButton
        class="button study-pad-step"
        label={words.lowerName}
        disabled={isLocked || rating <= LOWEST_RATING}
        onTap={() => step(-STEP)}
      >
        {words.lower}
      </TimingButton>
      <TimingButton
        class="button study-pad-step"
        label={words.higherName}
        disabled={isLocked || rating >= HIGHEST_RATING}
        onTap={() => step(STEP)}
      >
        {words.higher}
      </TimingButton>
      {direct.slice(6).map(choice)}
    </fieldset>
  );

  function choice(pct: number) {
    return (
      <TimingButton
        key={pct}
        class="choice number"
        label={words.rate(pct)}
        pressed={!isLocked && pct === rating}
        disabled={isLocked}
        onTap={() => onRate(pct)}
      >
        {pct}
      </TimingButton>
    );
  }
}

import { study } from '../../i18n/en/study';
import { TimingButton } from '../timing-button';

const words = study.observe;

export const LOWEST_RATING = 50;
export const HIGHEST_RATING = 150;
const STEP = 5;
/** Beyond these a rating is rare: reached by steps. */
const direct = [75, 80, 85, 90, 95, 100, 105, 110, 115, 120, 125];

/** What a touch of the pad judges. */
export interface Judged {
  readonly element: string;
  readonly ratingPct: number;
  /** It ended already: the rating comes late. */
  readonly isEnded: boolean;
  /** It was chosen for an element before this one. */
  readonly isCarried: boolean;
}

interface Props {
  /** Null when nothing can be rated now. */
  readonly judged: Judged | null;
  /** Why what is in hand cannot be rated; null when it can. */
  readonly lock: 'machine' | null;
  readonly disabled: boolean;
  readonly onRate: (ratingPct: number) => void;
  /** Goes over to the element that ended, or back to the one in hand; null when there is one only. */
  readonly onSwitch: (() => void) | null;
}

/** Rate first, then tap: the rating chosen stands until another is chosen. What just ended can be rated late. */
export function RatingPad({ judged, lock, disabled, onRate, onSwitch }: Props) {
  const isLocked = judged === null || disabled;
  const rating = judged?.ratingPct ?? 100;
  const step = (by: number) => onRate(Math.min(HIGHEST_RATING, Math.max(LOWEST_RATING, rating + by)));
  return (
    <fieldset class="study-pad">
      <legend class="visually-hidden">{words.rating}</legend>
      <Shown judged={judged} lock={lock} onSwitch={onSwitch} />
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

/** Which element is judged, and how; a touch goes over to the other one. */
function Shown({ judged, lock, onSwitch }: Pick<Props, 'judged' | 'lock' | 'onSwitch'>) {
  if (!judged) {
    return (
      <p class="study-pad-shown" role="status">
        <span class="study-pad-lock">{lock ? words.machineLock : words.rating}</span>
      </p>
    );
  }
  const { element, ratingPct, isEnded, isCarried } = judged;
  const when = isEnded ? words.ended : isCarried ? words.carried : words.inHand;
  const lines = (
    <>
      <span class="study-pad-element">{element}</span> <strong class="number">{ratingPct}</strong>{' '}
      <span class="study-pad-when">{when}</span>
    </>
  );
  if (!onSwitch) {
    return (
      <p class="study-pad-shown" role="status">
        {lines}
      </p>
    );
  }
  return (
    <button type="button" class="button study-pad-shown" onClick={onSwitch}>
      {lines}
      <span class="visually-hidden">{isEnded ? words.rateInHand : words.rateEnded}</span>
    </button>
  );
}

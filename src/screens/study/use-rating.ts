import { useState } from 'preact/hooks';
import { rateReading } from '../../application/study/rate-reading';
import { justEnded } from '../../domain/study/just-ended';
import { lastRateable } from '../../domain/study/last-rateable';
import type { Study } from '../../domain/study/study';
import { study as words } from '../../i18n/en/study';
import { useApp } from '../app';
import type { Judged } from './rating-pad';

interface Rating {
  /** What the next tap is rated with. */
  readonly standing: number;
  /** It was tapped for what is in hand at this moment; else it stood from before. */
  readonly isOwnNow: () => boolean;
  readonly judged: Judged | null;
  readonly lock: 'machine' | null;
  readonly rate: (ratingPct: number) => void;
  readonly switchOver: (() => void) | null;
}

/**
 * The rating of the element in hand, which stands until it is changed. While a machine is in hand, which nobody
 * rates, the pad is for the element that just ended; a switch brings it there at any other time.
 */
export function useRating(study: Study): Rating {
  const { bench } = useApp();
  const ended = lastRateable(study.readings);
  const [standing, setStanding] = useState(ended?.row.ratingPct ?? 100);
  /** The reading that was chosen to be rated late: the next tap brings the pad back to what is in hand. */
  const [late, setLate] = useState<string | null>(null);

  /** The element that the standing rating was chosen for: on others it is carried on. */
  const [chosenFor, setChosenFor] = useState('');

  const elements = study.heading?.elements ?? [];
  const { aside, elementIndex } = study.watch;
  // Asked by what is tapped, not as drawn: a pedal that bounces ends the next element before that is on the screen.
  const placeNow = () => placeOf(bench.study.peek() ?? study);
  // What is foreign has no rating: the pad stays with the element that it fell into.
  const inHand = elements[aside?.elementIndex ?? elementIndex];
  const lock = inHand?.work === 'machine' ? 'machine' : null;
  const isOwn = chosenFor === placeOf(study);
  const isLate = ended !== null && (late === ended.id || (lock === 'machine' && justEnded(study) !== null));

  const rate = (ratingPct: number) => {
    // A late rating judges the one reading that ended, and says nothing of what is in hand.
    if (isLate) {
      rateReading(bench, study, ended.id, ratingPct);
      return;
    }
    setStanding(ratingPct);
    setChosenFor(placeNow());
  };
  const judged: Judged | null = isLate
    ? { element: ended.row.element, ratingPct: ended.row.ratingPct, isEnded: true, isCarried: false }
    : lock !== 'machine'
      ? {
          element: inHand?.name ?? words.none,
          ratingPct: standing,
          isEnded: false,
          isCarried: standing !== 100 && !isOwn,
        }
      : null;
  const canSwitch = ended !== null && lock === null;
  return {
    standing,
    isOwnNow: () => chosenFor === placeNow(),
    judged,
    lock,
    rate,
    switchOver: canSwitch ? () => setLate(isLate ? null : ended.id) : null,
  };
}

/** The element of the cycle that is in hand. */
function placeOf({ watch: { aside, cycle, elementIndex } }: Study): string {
  return `${cycle}:${aside?.elementIndex ?? elementIndex}`;
}

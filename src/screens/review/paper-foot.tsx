import { useEffect, useState } from 'preact/hooks';
import { localDay } from '../../domain/day/local-day';
import { reviewPlaces } from '../../i18n/en/review-places';
import { formatDay } from '../../i18n/format-day';
import { useApp } from '../app';
import { timeOfDay } from '../pace/time-of-day';
import type { ReviewPlace } from './review-place';

const words = reviewPlaces.paper;

/** On paper only: when it was printed, how far the records reach, what it is not, and room to write. */
export function PaperFoot({ newest, place }: { newest: string; place: ReviewPlace }) {
  const { bench, isDemo } = useApp();
  const [printedAt, setPrintedAt] = useState(() => bench.clock.now());
  useEffect(() => {
    const note = () => setPrintedAt(bench.clock.now());
    addEventListener('beforeprint', note);
    return () => removeEventListener('beforeprint', note);
  }, [bench]);
  return (
    <footer class="review-paper">
      <p>
        {isDemo && words.demo} {words.printed(formatDay(localDay(printedAt)), timeOfDay(printedAt))}{' '}
        {words.records(formatDay(newest))} {words.targets} {words.notForPay}
      </p>
      {/* A day is signed for; lines under the others would take a sheet of their own. */}
      {(place === 'day' ? [words.remarks, words.toDo, words.signed] : [words.remarks]).map((name) => (
        <p key={name} class="review-line">
          {name}
        </p>
      ))}
    </footer>
  );
}

import './review.css';
import './review-places.css';
import { useState } from 'preact/hooks';
import { review } from '../../i18n/en/review';
import { reviewPlaces as words } from '../../i18n/en/review-places';
import { saveTablesWords } from '../../i18n/en/save-tables';
import { useApp } from '../app';
import { useLazy } from '../use-lazy';
import { DayPlace } from './day-place';
import { OlderDays } from './older-days';
import { PaperFoot } from './paper-foot';
import { PlaceLinks } from './place-links';
import type { PlaceProps } from './place-props';
import { ReviewEmpty } from './review-empty';
import { placeOf } from './review-place';
import { SaveTables } from './save-tables';
import { useNewestDay } from './use-newest-day';
import { useSummaries } from './use-summaries';
import type { Working } from './working';
import { WorkingSheet } from './working-sheet';

const FOUR_WEEKS = 4;

const places = {
  weeks: async () => (await import('./weeks/weeks-place')).WeeksPlace,
  'before-after': async () => (await import('./compare/compare-place')).ComparePlace,
  promises: async () => (await import('./promises/promises-place')).PromisesPlace,
};

/** How did the day go, fairly? The day first; the weeks, a comparison and promises at places of their own. */
export function ReviewScreen() {
  const app = useApp();
  const [weeks, setWeeks] = useState(FOUR_WEEKS);
  const found = useSummaries(weeks);
  const [working, setWorking] = useState<Working | null>(null);
  const { id } = app.route.value;
  const place = placeOf(id);
  const { state, problem, days, book, making, readAgain } = found;
  const newest = useNewestDay();

  if (state === 'trouble') {
    return (
      <div class="page stack" role="alert">
        <p class="fault">{review.trouble(problem)}</p>
        <div class="row">
          <button type="button" class="button" onClick={readAgain}>
            {review.tryAgain}
          </button>
        </div>
      </div>
    );
  }
  if (newest === undefined) return <p class="page quiet">{review.reading}</p>;
  if (newest === null && !(place === 'before-after' && book)) return <ReviewEmpty />;
  const readOlder = found.hasOlder && !making ? () => setWeeks(longerThan(weeks)) : null;
  const older = found.hasOlder && days.length > 0 && (
    <OlderDays oldest={days.at(-1)!.day} nextWeeks={longerThan(weeks)} readOlder={readOlder} />
  );
  return (
    <div class="page stack review">
      <PlaceLinks place={place} />
      {place !== 'day' && older}
      {place === 'day' && newest && (
        <DayPlace id={id} newest={newest} days={days} book={book} readOlder={readOlder} open={setWorking} />
      )}
      {place !== 'day' && book && (days.length > 0 || newest === null) && (
        <LazyPlace key={place} place={place} days={days} book={book} open={setWorking} />
      )}
      {place === 'weeks' && days.length > 0 && <SaveTables day={null} days={days} />}
      {(place === 'before-after' || place === 'promises') && days.length > 0 && (
        <div class="row no-print">
          <button type="button" class="button" onClick={() => print()}>
            {saveTablesWords.print}
          </button>
        </div>
      )}
      {state === 'reading' && !making && place !== 'day' && <p class="quiet">{review.reading}</p>}
      {making && (
        <p class="quiet" role="status">
          {words.making(making.done, making.of)}
        </p>
      )}
      {place === 'day' && <div class="no-print">{older}</div>}
      {newest && <PaperFoot newest={newest} place={place} />}
      {working && <WorkingSheet working={working} close={() => setWorking(null)} />}
    </div>
  );
}

/** Four weeks, a quarter, a year, and then year by year. */
function longerThan(weeks: number): number {
  if (weeks < 13) return 13;
  return weeks < 52 ? 52 : weeks + 52;
}

function LazyPlace({ place, ...props }: PlaceProps & { place: keyof typeof places }) {
  const Place = useLazy(true, places[place]);
  return Place ? <Place {...props} /> : <p class="quiet">{review.reading}</p>;
}

import './review.css';
import { useEffect, useState } from 'preact/hooks';
import { review as words } from '../../i18n/en/review';
import { formatDay } from '../../i18n/format-day';
import { useApp } from '../app';
import { DayPicker } from './day-picker';
import { keptDay } from './kept-day';
import { OneDay } from './one-day';
import { ReviewEmpty } from './review-empty';
import { SaveDayTable } from './save-day-table';
import { useDays } from './use-days';
import { useOneDay } from './use-one-day';
import { Weeks } from './weeks';
import type { Working } from './working';
import { WorkingSheet } from './working-sheet';

/** How did the day go, fairly? One day in full, then the weeks of one part. People are not shown. */
export function ReviewScreen() {
  const app = useApp();
  const { state, problem, days, hasOlder, readOlder, readAgain } = useDays();
  const [working, setWorking] = useState<Working | null>(null);
  const { id } = app.route.value;
  const newest = days[0]?.day ?? '';
  const chosen = id || keptDay.of(app.bench, newest) || newest;
  useEffect(() => {
    if (id && newest) keptDay.keep(app.bench, { day: id, newest });
  }, [app.bench, id, newest]);
  const { day, isSought } = useOneDay(days, chosen, state === 'read');

  if (state === 'trouble') {
    return (
      <div class="page stack" role="alert">
        <p class="fault">{words.trouble(problem)}</p>
        <div class="row">
          <button type="button" class="button" onClick={readAgain}>
            {words.tryAgain}
          </button>
        </div>
      </div>
    );
  }
  if (state === 'reading') return <p class="page quiet">{words.reading}</p>;
  if (days.length === 0) return <ReviewEmpty />;

  const pickDay = (wanted: string) => {
    app.go('review', wanted);
    document.querySelector('.shell-main')?.scrollTo({ top: 0 });
  };
  return (
    <div class="page stack review">
      <DayPicker days={days} chosen={chosen} pickDay={pickDay} />
      {day ? (
        <OneDay key={day.day} day={day} days={days} open={setWorking} />
      ) : (
        <div class="panel stack" role="status">
          <h1>{isSought ? words.reading : words.noSuchDay(dayInWords(chosen))}</h1>
          <div class="row">
            <button type="button" class="button" onClick={() => pickDay(newest)}>
              {words.newestDay}
            </button>
          </div>
        </div>
      )}
      <Weeks
        days={days}
        chosen={chosen}
        hasOlder={hasOlder}
        readOlder={readOlder}
        open={setWorking}
        pickDay={pickDay}
      />
      <SaveDayTable day={day} days={days} />
      {working && <WorkingSheet working={working} close={() => setWorking(null)} />}
    </div>
  );
}

/** An address typed by hand may name no day; it is shown as it stands. */
function dayInWords(text: string): string {
  return Number.isNaN(Date.parse(text)) ? `“${text}”` : formatDay(text);
}

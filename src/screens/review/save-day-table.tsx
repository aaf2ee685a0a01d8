import { useState } from 'preact/hooks';
import type { DayReview } from '../../domain/day/review-day';
import { writeDayTable } from '../../exchange/write-day-table';
import { review } from '../../i18n/en/review';
import { useApp } from '../app';
import { chosenForm } from '../records/chosen-profile';

const words = review.save;

/** Takes the day, or all days that were read, out of the tablet as a table. */
export function SaveDayTable({ day, days }: { day: DayReview | null; days: readonly DayReview[] }) {
  const app = useApp();
  const [told, setTold] = useState('');
  const save = async (wanted: readonly DayReview[]) => {
    const [newest, oldest] = [wanted[0]!.day, wanted.at(-1)!.day];
    const name = `days-${oldest === newest ? oldest : `${oldest}-to-${newest}`}.csv`;
    const text = writeDayTable(wanted, chosenForm.value);
    try {
      await app.files.save({ name, type: 'text/csv', text });
      setTold(words.saved(name));
    } catch (error) {
      setTold(words.failed(String(error)));
    }
  };
  return (
    <section class="stack no-print" aria-labelledby="review-save-title">
      <h2 id="review-save-title">{words.title}</h2>
      <div class="row">
        {day && (
          <button type="button" class="button" onClick={() => save([day])}>
            {words.thisDay}
          </button>
        )}
        {days.length > 1 && (
          <button type="button" class="button" onClick={() => save(days)}>
            {words.allDays(days.length)}
          </button>
        )}
      </div>
      <p class="small quiet">{words.note}</p>
      <p role="status">{told}</p>
    </section>
  );
}

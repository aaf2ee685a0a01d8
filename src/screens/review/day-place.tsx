import { useEffect, useState } from 'preact/hooks';
import { reviewDay } from '../../domain/day/review-day';
import { review as words } from '../../i18n/en/review';
import { formatDay } from '../../i18n/format-day';
import { useApp } from '../app';
import type { Who } from '../settle/question';
import { DayPicker } from './day-picker';
import { keptDay } from './kept-day';
import { OneDay } from './one-day';
import type { PlaceProps } from './place-props';
import { SaveTables } from './save-tables';
import { useTurnsOfDay } from './use-turns-of-day';

interface Props extends Pick<PlaceProps, 'days' | 'open'> {
  /** A day, or empty for the one that was looked at last. */
  readonly id: string;
  readonly newest: string;
  /** Null while the days around it are still added up: the day itself waits for none of them. */
  readonly book: PlaceProps['book'] | null;
  /** Null where no older day is, or while some are being read. */
  readonly readOlder: (() => void) | null;
}

/** One day: the newest, the one that was chosen, or one that an address names. */
export function DayPlace({ id, newest, days, book, readOlder, open }: Props) {
  const app = useApp();
  const chosen = id || keptDay.of(app.bench, newest) || newest;
  useEffect(() => {
    if (id) keptDay.keep(app.bench, { day: id, newest });
  }, [app.bench, id, newest]);
  const turns = useTurnsOfDay(chosen);
  // Asked once, whatever day is looked at next.
  const [who, setWho] = useState<Who>({ by: '', why: '', isAtStation: false });
  const isSought = turns === null;
  const day =
    turns && turns.length > 0
      ? reviewDay(
          chosen,
          turns.map(({ turn }) => turn),
        )
      : null;
  const pickDay = (wanted: string) => {
    app.go('review', wanted);
    document.querySelector('.shell-main')?.scrollTo({ top: 0 });
  };
  return (
    <>
      <DayPicker
        days={days.length > 0 || !day ? days : [day]}
        chosen={chosen}
        pickDay={pickDay}
        readOlder={readOlder}
      />
      {day ? (
        <OneDay
          key={day.day}
          day={day}
          turns={turns!}
          days={days}
          book={book}
          open={open}
          who={who}
          setWho={setWho}
        />
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
      {days.length > 0 && <SaveTables day={day?.day ?? null} days={days} />}
    </>
  );
}

/** An address typed by hand may name no day; it is shown as it stands. */
function dayInWords(text: string): string {
  return Number.isNaN(Date.parse(text)) ? `“${text}”` : formatDay(text);
}

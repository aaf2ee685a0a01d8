import { useEffect, useState } from 'preact/hooks';
import { review as words } from '../../i18n/en/review';
import { formatDay } from '../../i18n/format-day';

interface Props {
  /** Newest first. */
  readonly days: readonly { readonly day: string; readonly done: number }[];
  readonly chosen: string;
  readonly pickDay: (day: string) => void;
  readonly readOlder: (() => void) | null;
}

/** The days, newest first: one from the list, or the one before or after. Before the oldest more of them are read. */
export function DayPicker({ days, chosen, pickDay, readOlder }: Props) {
  const place = days.findIndex(({ day }) => day === chosen);
  const earlier = place < 0 ? undefined : days[place + 1];
  const later = place < 0 ? undefined : days[place - 1];
  // The day before the oldest is gone to as soon as it is read.
  const [beforeDay, setBeforeDay] = useState('');
  useEffect(() => {
    if (!earlier || beforeDay !== chosen) return;
    setBeforeDay('');
    pickDay(earlier.day);
  });
  const goEarlier = () => {
    if (earlier) return pickDay(earlier.day);
    setBeforeDay(chosen);
    readOlder?.();
  };
  return (
    <div class="row review-picker no-print">
      <button
        type="button"
        class="button"
        disabled={!earlier && (!readOlder || place < 0)}
        onClick={goEarlier}
      >
        {words.earlier}
      </button>
      <label class="field">
        <span class="visually-hidden">{words.day}</span>
        <select value={chosen} onChange={(event) => pickDay(event.currentTarget.value)}>
          {place < 0 && <option value={chosen}>–</option>}
          {days.map(({ day, done }) => (
            <option key={day} value={day}>
              {words.dayInList(formatDay(day), done)}
            </option>
          ))}
        </select>
      </label>
      <button type="button" class="button" disabled={!later} onClick={() => later && pickDay(later.day)}>
        {words.later}
      </button>
    </div>
  );
}

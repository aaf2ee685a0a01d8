import './calendar.css';
import { useState } from 'preact/hooks';
import { setCalendar } from '../../application/shop/set-calendar';
import { clockOfMinute } from '../../domain/shop/clock-minute';
import { isMeal } from '../../domain/shop/is-meal';
import type { DayStretch, ShiftCalendar, ShiftTimes, WeeklyShift } from '../../domain/shop/shift-calendar';
import { calendar as words } from '../../i18n/en/calendar';
import { formatDay } from '../../i18n/format-day';
import { useApp } from '../app';
import { DayForm } from './day-form';
import { emptyShift, ShiftForm, type ShiftTyped, typedShift } from './shift-form';
import { useKeptDraft } from './use-kept-draft';

const emptyCalendar: ShiftCalendar = { shifts: [], exceptions: [] };

/** Shifts, breaks, and the days that are otherwise. */
export function CalendarSection() {
  const { bench, isReadOnly } = useApp();
  const saved = bench.shop.value.calendar ?? emptyCalendar;
  const [form, keepForm] = useKeptDraft<{ place: number; typed: ShiftTyped }>(bench, 'shift');
  const [isAddingDay, setAddingDay] = useState(false);
  const [told, setTold] = useState('');
  const save = (next: ShiftCalendar) => {
    setCalendar(bench, next);
    keepForm(null);
    setAddingDay(false);
    setTold(words.saved);
  };
  const open = (place: number, typed: ShiftTyped) => {
    setTold('');
    keepForm({ place, typed });
  };
  return (
    <section class="stack" aria-labelledby="shop-calendar-title">
      <h2 id="shop-calendar-title">{words.title}</h2>
      <p class="small quiet">{words.note}</p>
      {saved.shifts.length === 0 && !form && <p>{words.none}</p>}
      {saved.shifts.length > 0 && (
        <ul class="shop-list">
          {saved.shifts.map((shift, place) => (
            <li key={`${place} ${shift.name}`} class="row spread shop-shift">
              <p>
                <strong>{shift.name}</strong> {daysText(shift.weekdays)}, {timesText(shift)}
                <span class="small quiet shop-shift-breaks">{breaksText(shift)}</span>
              </p>
              <button
                type="button"
                class="button"
                aria-label={words.changeShift(shift.name || timesText(shift))}
                disabled={isReadOnly}
                onClick={() => open(place, typedShift(shift))}
              >
                {words.change}
              </button>
            </li>
          ))}
        </ul>
      )}
      {form ? (
        <ShiftForm
          key={form.place}
          typed={form.typed}
          isNew={form.place >= saved.shifts.length}
          change={(typed) => keepForm({ ...form, typed })}
          save={(shift) => save({ ...saved, shifts: replaced(saved.shifts, form.place, shift) })}
          leaveOut={() => save({ ...saved, shifts: saved.shifts.filter((_, at) => at !== form.place) })}
          close={() => keepForm(null)}
        />
      ) : (
        <div class="row">
          <button
            type="button"
            class="button"
            disabled={isReadOnly}
            onClick={() => open(saved.shifts.length, emptyShift)}
          >
            {words.addShift}
          </button>
        </div>
      )}
      {saved.shifts.length > 0 && (
        <>
          <h3 class="shop-days-title">{words.daysTitle}</h3>
          {saved.exceptions.length > 0 && (
            <ul class="shop-list">
              {[...saved.exceptions]
                .sort((a, b) => (a.day < b.day ? -1 : 1))
                .map(({ day, shifts }) => (
                  <li key={day} class="row spread shop-shift">
                    <p>
                      <strong>{formatDay(day)}</strong>{' '}
                      {shifts.length === 0 ? words.closed : shifts.map(timesText).join(', ')}
                    </p>
                    <button
                      type="button"
                      class="button plain"
                      aria-label={words.leaveDayOut(formatDay(day))}
                      disabled={isReadOnly}
                      onClick={() =>
                        save({ ...saved, exceptions: saved.exceptions.filter((each) => each.day !== day) })
                      }
                    >
                      {words.leaveOut}
                    </button>
                  </li>
                ))}
            </ul>
          )}
          {isAddingDay ? (
            <DayForm
              saved={saved}
              save={(exception) => save({ ...saved, exceptions: [...saved.exceptions, exception] })}
              close={() => setAddingDay(false)}
            />
          ) : (
            <div class="row">
              <button type="button" class="button" disabled={isReadOnly} onClick={() => setAddingDay(true)}>
                {words.addDay}
              </button>
            </div>
          )}
        </>
      )}
      <p role="status">{told}</p>
    </section>
  );
}

function replaced(shifts: readonly WeeklyShift[], place: number, shift: WeeklyShift): WeeklyShift[] {
  return place < shifts.length ? shifts.map((each, at) => (at === place ? shift : each)) : [...shifts, shift];
}

function timesText({ fromMin, toMin }: DayStretch): string {
  return words.times(clockOfMinute(fromMin), clockOfMinute(toMin));
}

function breaksText({ breaks }: ShiftTimes): string {
  if (breaks.length === 0) return words.noBreaks;
  const text = (each: ShiftTimes['breaks'][number]) => {
    const lengthMin = (each.toMin - each.fromMin + 1_440) % 1_440;
    return `${timesText(each)} (${isMeal(each, lengthMin * 60_000) ? words.meal : words.rest})`;
  };
  return words.breaks(breaks.map(text).join(', '));
}

/** Three days and more in a row as a span: Mon–Fri. */
function daysText(weekdays: readonly number[]): string {
  const names = words.weekdays;
  const runs: number[][] = [];
  for (const day of [...weekdays].sort()) {
    const run = runs.at(-1);
    if (run?.at(-1) === day - 1) run.push(day);
    else runs.push([day]);
  }
  const name = (day: number) => names[day - 1]!;
  return runs
    .map((run) => (run.length > 2 ? `${name(run[0]!)}–${name(run.at(-1)!)}` : run.map(name).join(', ')))
    .join(', ');
}

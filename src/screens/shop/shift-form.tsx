import { useState } from 'preact/hooks';
import { areBreaksInside, MOST_BREAKS } from '../../application/shop/set-calendar';
import { clockOfMinute, minuteOfClock } from '../../domain/shop/clock-minute';
import type { DayStretch, WeeklyShift } from '../../domain/shop/shift-calendar';
import { calendar as words } from '../../i18n/en/calendar';
import { useApp } from '../app';
import { TimeSpanFields } from './time-span-fields';

/** From and to as typed. */
export interface SpanTyped {
  readonly from: string;
  readonly to: string;
}

/** A shift as it is being typed. */
export interface ShiftTyped extends SpanTyped {
  readonly name: string;
  readonly weekdays: readonly number[];
  readonly breaks: readonly SpanTyped[];
}

export const emptyShift: ShiftTyped = { name: '', weekdays: [1, 2, 3, 4, 5], from: '', to: '', breaks: [] };
const emptySpan: SpanTyped = { from: '', to: '' };

export function typedShift({ name, weekdays, fromMin, toMin, breaks }: WeeklyShift): ShiftTyped {
  return { name, weekdays, ...typedSpan({ fromMin, toMin }), breaks: breaks.map(typedSpan) };
}

/** The minutes of a span as typed; null when a time is missing, or it has no length. */
export function readSpan({ from, to }: SpanTyped): DayStretch | null {
  const fromMin = minuteOfClock(from);
  const toMin = minuteOfClock(to);
  return fromMin === null || toMin === null || fromMin === toMin ? null : { fromMin, toMin };
}

interface Props {
  readonly typed: ShiftTyped;
  readonly isNew: boolean;
  change(typed: ShiftTyped): void;
  save(shift: WeeklyShift): void;
  leaveOut(): void;
  close(): void;
}

/** One shift: its name, its days, from when to when, and its breaks. */
export function ShiftForm({ typed, isNew, change, save, leaveOut, close }: Props) {
  const { isReadOnly } = useApp();
  const [fault, setFault] = useState('');
  const { name, weekdays, from, to, breaks } = typed;
  const span = readSpan(typed);
  const alter = (part: Partial<ShiftTyped>) => {
    setFault('');
    change({ ...typed, ...part });
  };
  const alterBreak = (place: number, next: SpanTyped) =>
    alter({ breaks: breaks.map((each, at) => (at === place ? next : each)) });
  const send = (event: Event) => {
    event.preventDefault();
    const shift = readShift(typed);
    if (typeof shift === 'string') setFault(words.faults[shift]);
    else save(shift);
  };
  return (
    <form class="stack panel" onSubmit={send} noValidate>
      <h3>{isNew ? words.newShift : words.shiftTitle(name)}</h3>
      <div class="shop-span">
        <label class="field">
          <span>{words.name}</span>
          <input
            value={name}
            maxLength={24}
            autocomplete="off"
            onInput={(event) => alter({ name: event.currentTarget.value })}
          />
        </label>
        <TimeSpanFields from={from} to={to} fromLabel={words.from} toLabel={words.to} change={alter} />
        {span && span.toMin < span.fromMin && <p class="quiet small">{words.nextDay}</p>}
      </div>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a wrapping row everywhere */}
      <div class="choices" role="group" aria-label={words.onDays}>
        {words.weekdays.map((day, before) => {
          const isOn = weekdays.includes(before + 1);
          const next = isOn ? weekdays.filter((each) => each !== before + 1) : [...weekdays, before + 1];
          return (
            <button
              type="button"
              key={day}
              class="choice"
              aria-pressed={isOn}
              onClick={() => alter({ weekdays: next.sort() })}
            >
              {day}
            </button>
          );
        })}
      </div>
      {breaks.map((each, place) => (
        <div class="shop-span" key={place}>
          <TimeSpanFields
            {...each}
            fromLabel={words.breakFrom(place + 1)}
            toLabel={words.breakTo(place + 1)}
            change={(next) => alterBreak(place, next)}
          />
          <button
            type="button"
            class="button plain"
            aria-label={words.leaveBreakOut(place + 1)}
            onClick={() => alter({ breaks: breaks.filter((_, at) => at !== place) })}
          >
            {words.leaveOut}
          </button>
        </div>
      ))}
      {fault && (
        <p class="fault" role="alert">
          {fault}
        </p>
      )}
      <div class="row">
        <button
          type="button"
          class="button"
          disabled={breaks.length >= MOST_BREAKS}
          onClick={() => alter({ breaks: [...breaks, emptySpan] })}
        >
          {words.addBreak}
        </button>
        <button type="submit" class="button strong" disabled={isReadOnly}>
          {words.save}
        </button>
        <button type="button" class="button" onClick={close}>
          {words.cancel}
        </button>
        {!isNew && (
          <button type="button" class="button plain" disabled={isReadOnly} onClick={leaveOut}>
            {words.leaveShiftOut}
          </button>
        )}
      </div>
    </form>
  );
}

/** The shift as typed, or what is wrong with it. */
function readShift(typed: ShiftTyped): WeeklyShift | 'name' | 'days' | 'times' | 'breaks' {
  const span = readSpan(typed);
  const breaks = typed.breaks.map(readSpan).filter((each) => each !== null);
  if (typed.name.trim() === '') return 'name';
  if (typed.weekdays.length === 0) return 'days';
  if (!span || breaks.length < typed.breaks.length) return 'times';
  const shift = { name: typed.name.trim(), weekdays: typed.weekdays, ...span, breaks };
  return areBreaksInside(shift) ? shift : 'breaks';
}

function typedSpan({ fromMin, toMin }: DayStretch): SpanTyped {
  return { from: clockOfMinute(fromMin), to: clockOfMinute(toMin) };
}

import { useState } from 'preact/hooks';
import { faultyBreak, MOST_BREAKS } from '../../application/shop/set-calendar';
import { clockOfMinute, minuteOfClock } from '../../domain/shop/clock-minute';
import { isMeal } from '../../domain/shop/is-meal';
import type { DayBreak, DayStretch, WeeklyShift } from '../../domain/shop/shift-calendar';
import { calendar as words } from '../../i18n/en/calendar';
import { useApp } from '../app';
import { TimeSpanFields } from './time-span-fields';

/** From and to as typed. */
export interface SpanTyped {
  readonly from: string;
  readonly to: string;
}

/** A break as typed: what it counts as is left out while nobody said, and then its length says it. */
export interface BreakTyped extends SpanTyped {
  readonly isAttended?: boolean;
}

/** A shift as it is being typed. */
export interface ShiftTyped extends SpanTyped {
  readonly name: string;
  readonly weekdays: readonly number[];
  readonly breaks: readonly BreakTyped[];
}

export const emptyShift: ShiftTyped = { name: '', weekdays: [1, 2, 3, 4, 5], from: '', to: '', breaks: [] };
const emptySpan: BreakTyped = { from: '', to: '' };

export function typedShift({ name, weekdays, fromMin, toMin, breaks }: WeeklyShift): ShiftTyped {
  return { name, weekdays, ...typedSpan({ fromMin, toMin }), breaks: breaks.map(typedBreak) };
}

/** The minutes of a span as typed, 24:00 as an end too; null when a time is missing, or it has no length. */
export function readSpan({ from, to }: SpanTyped): DayStretch | null {
  const fromMin = minuteOfClock(from);
  const toMin = minuteOfClock(to.replace(/^24([:.]?00)?$/, '00:00'));
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
  const alterBreak = (place: number, next: Partial<BreakTyped>) =>
    alter({ breaks: breaks.map((each, at) => (at === place ? { ...each, ...next } : each)) });
  const send = (event: Event) => {
    event.preventDefault();
    const shift = readShift(typed);
    if (typeof shift === 'string') setFault(shift);
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
        <div class="shop-span shop-break" key={place}>
          <TimeSpanFields
            {...each}
            fromLabel={words.breakFrom(place + 1)}
            toLabel={words.breakTo(place + 1)}
            change={(next) => alterBreak(place, next)}
          />
          <label class="field">
            <span>{words.counts(place + 1)}</span>
            <select
              value={isMealTyped(each) ? 'meal' : 'rest'}
              onChange={(event) => alterBreak(place, { isAttended: event.currentTarget.value === 'rest' })}
            >
              <option value="rest">{words.rest}</option>
              <option value="meal">{words.meal}</option>
            </select>
          </label>
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

/** The shift as typed, or a sentence on what is wrong with it. */
function readShift(typed: ShiftTyped): WeeklyShift | string {
  const span = readSpan(typed);
  const breaks = typed.breaks.map(readBreak);
  const known = breaks.filter((each) => each !== null);
  if (typed.weekdays.length === 0) return words.faults.days;
  if (!span) return words.faults.times;
  if (known.length < breaks.length) return words.faults.breakTimes(breaks.indexOf(null) + 1);
  const shift = { name: typed.name.trim(), weekdays: typed.weekdays, ...span, breaks: known };
  const faulty = faultyBreak(shift);
  if (!faulty) return shift;
  return faulty.over === null
    ? words.faults.breakOutside(faulty.place + 1)
    : words.faults.breaksOverlap(faulty.place + 1, faulty.over + 1);
}

function readBreak(typed: BreakTyped): DayBreak | null {
  const span = readSpan(typed);
  return span && { ...span, ...counted(typed) };
}

function typedBreak({ fromMin, toMin, isAttended }: DayBreak): BreakTyped {
  return { ...typedSpan({ fromMin, toMin }), ...counted({ isAttended }) };
}

/** What nobody said is left out. */
function counted({
  isAttended,
}: {
  readonly isAttended?: boolean | undefined;
}): Pick<DayBreak, 'isAttended'> {
  return isAttended === undefined ? {} : { isAttended };
}

/** What a break counts as, also while it is being typed. */
function isMealTyped(typed: BreakTyped): boolean {
  const span = readSpan(typed);
  return isMeal(typed, span && span.toMin > span.fromMin ? (span.toMin - span.fromMin) * 60_000 : 0);
}

function typedSpan({ fromMin, toMin }: DayStretch): SpanTyped {
  return { from: clockOfMinute(fromMin), to: clockOfMinute(toMin) };
}

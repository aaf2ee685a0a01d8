import { useState } from 'preact/hooks';
import { makeQuotation } from '../../../application/review/make-quotation';
import { dayMinute } from '../../../domain/day/day-minute';
import { attendedDayMs, usualDayMs } from '../../../domain/weeks/attended-day';
import { quoteTime } from '../../../domain/weeks/quote-time';
import { setUpStandardAt } from '../../../domain/weeks/review-book';
import { promisesWords } from '../../../i18n/en/promises';
import { review } from '../../../i18n/en/review';
import { formatDay } from '../../../i18n/format-day';
import { formatNumber } from '../../../i18n/format-number';
import { parseDecimal, parseWhole } from '../../../i18n/parse-number';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';
import { useApp } from '../../app';
import type { PlaceProps } from '../place-props';
import { sinceLastChange } from '../since-last-change';
import { CountByDay } from './count-by-day';
import { type OrderTyped, orderInHand } from './order-in-hand';
import { quotedDays } from './quoted-days';
import { ANOTHER_SIZE, partQuoted, sizeQuoted } from './quoted-part';
import { shopEfficiency } from './shop-efficiency';
import { SizeFields } from './size-fields';

const words = promisesWords.quote;
const HOUR_MS = 3_600_000;

/** The time of an order, with the standard it rests on. */
export function QuoteForm({ days, book }: Pick<PlaceProps, 'days' | 'book'>) {
  const { bench, isReadOnly } = useApp();
  const parts = bench.shop.value.parts.filter(({ retired, targetMs }) => !retired && targetMs !== null);
  const order = orderInHand(bench);
  const { wanted, quantity, setUps, freeFrom, people, until, size } = order.value;
  const type = (change: Partial<OrderTyped>) => {
    order.value = { ...order.value, ...change };
  };
  const [note, setNote] = useState('');
  const [by, setBy] = useState('');
  const isSize = wanted === ANOTHER_SIZE || parts.length === 0;
  const part = isSize ? sizeQuoted(size) : partQuoted(parts.find(({ id }) => id === wanted) ?? parts[0]!);
  const count = parseWhole(quantity) ?? 0;
  const setUpStandardMs = setUpStandardAt(book, Number.MAX_SAFE_INTEGER);
  const setUpMs = (parseWhole(setUps) ?? 0) * (setUpStandardMs ?? 0);
  const efficiency = shopEfficiency(sinceLastChange(days, book));
  const isOrder = part !== null && count >= 1;
  const quoted = isOrder
    ? quoteTime({ ...part, quantity: count, setUpMs }, efficiency.efficiencies, efficiency.dayMs)
    : null;
  const { calendar } = bench.shop.value;
  const now = dayMinute(bench.clock.now());
  const due = quoted && quotedDays(calendar, order.value, quoted, now);
  const fault = orderFault(order.value);
  const save = (event: Event) => {
    event.preventDefault();
    if (!quoted || !part) return;
    const { totalMs, lowMs, highMs } = quoted;
    makeQuotation(bench, {
      part: part.id,
      partCode: part.code,
      quantity: count,
      setUpMs,
      perPartMs: part.standardMs,
      totalMs,
      lowMs,
      highMs,
      methodRevision: part.revision,
      study: part.study,
      note,
      ...(due && { due }),
      by,
    });
    setNote('');
  };
  return (
    <section class="stack" aria-labelledby="review-quote-title">
      <h2 id="review-quote-title">{words.title}</h2>
      <form class="stack review-form" onSubmit={save}>
        <div class="review-dates no-print">
          <label class="field">
            <span>{words.part}</span>
            <select
              value={isSize ? ANOTHER_SIZE : (part?.id ?? '')}
              onChange={(event) => type({ wanted: event.currentTarget.value })}
            >
              {parts.map(({ id, code, name }) => (
                <option key={id} value={id}>
                  {[code, name].filter(Boolean).join(' ')}
                </option>
              ))}
              <option value={ANOTHER_SIZE}>{words.anotherSize}</option>
            </select>
          </label>
          <label class="field">
            <span>{words.quantity}</span>
            <input
              value={quantity}
              inputMode="numeric"
              onInput={(event) => type({ quantity: event.currentTarget.value })}
            />
          </label>
          <label class="field">
            <span>{words.setUps}</span>
            <input
              value={setUps}
              inputMode="numeric"
              onInput={(event) => type({ setUps: event.currentTarget.value })}
            />
          </label>
        </div>
        {isSize && <SizeFields size={size} change={(size) => type({ size })} />}
        <div class="review-dates no-print">
          <label class="field">
            <span>{words.freeFrom}</span>
            <input
              type="date"
              value={freeFrom}
              onInput={(event) => type({ freeFrom: event.currentTarget.value })}
            />
          </label>
          <label class="field">
            <span>{words.people}</span>
            <input
              value={people}
              inputMode="decimal"
              onInput={(event) => type({ people: event.currentTarget.value })}
            />
          </label>
          <label class="field">
            <span>{words.until}</span>
            <input
              type="date"
              value={until}
              onInput={(event) => type({ until: event.currentTarget.value })}
            />
          </label>
        </div>
        {fault && <p role="status">{fault}</p>}
        {quoted && part && (
          <div class="panel stack review-head">
            <p>
              <strong>{words.result(hours(quoted.totalMs), formatNumber(count), part.code)}</strong>
            </p>
            {due && (
              <p>
                <strong>
                  {words.due(formatDay(due.finish), formatNumber(due.people, due.people % 1 ? 1 : 0))}
                </strong>
                {due.latest !== null &&
                  due.latest !== due.finish &&
                  ` ${words.latest(formatDay(due.latest))}`}
              </p>
            )}
            <p>
              {quoted.lowMs !== null && quoted.highMs !== null
                ? words.interval(hours(quoted.lowMs), hours(quoted.highMs), quoted.days)
                : words.noInterval(efficiency.gave, quoted.days)}
            </p>
            <p class="small quiet">
              {words.standard(
                roundedClockFace(part.standardMs),
                setUpStandardMs === null ? null : roundedClockFace(setUpStandardMs),
                words.sources[part.source],
              )}{' '}
              {part.revision === null ? words.noRevision : words.revision(part.revision)}{' '}
              {calendar ? words.calendar(hours(usualDayMs(calendar, freeFrom))) : words.noCalendar}{' '}
              {freeFrom <= now.day && todayText(attendedDayMs(calendar, now.day, now.minute))}
            </p>
          </div>
        )}
        {part && <CountByDay part={part} setUpMs={setUpMs} efficiency={efficiency} />}
        {!isReadOnly && (
          <>
            <div class="review-dates no-print">
              <label class="field">
                <span>{words.note}</span>
                <input value={note} maxLength={120} onInput={(event) => setNote(event.currentTarget.value)} />
              </label>
              <label class="field">
                <span>{review.note.by}</span>
                <input value={by} maxLength={20} onInput={(event) => setBy(event.currentTarget.value)} />
              </label>
            </div>
            <div class="row no-print">
              <button type="submit" class="button" disabled={!quoted}>
                {words.save}
              </button>
            </div>
          </>
        )}
      </form>
    </section>
  );
}

/** What of an order cannot be read, in one sentence; an empty field is no fault yet. */
function orderFault({ quantity, setUps, people }: OrderTyped): string {
  const isTyped = (typed: string) => typed.trim() !== '';
  if (isTyped(quantity) && !((parseWhole(quantity) ?? 0) >= 1)) return words.faults.quantity;
  if (isTyped(setUps) && parseWhole(setUps) === null) return words.faults.setUps;
  return isTyped(people) && !((parseDecimal(people) ?? 0) > 0) ? words.faults.people : '';
}

function hours(ms: number): string {
  return promisesWords.hours(formatNumber(ms / HOUR_MS, 1));
}

/** How much of the day on which it is asked is in the promise. */
function todayText(leftMs: number): string {
  return leftMs > 0 ? words.todayLeft(hours(leftMs)) : words.todayGone;
}

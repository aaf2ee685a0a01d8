import { useState } from 'preact/hooks';
import { localDay } from '../../../domain/day/local-day';
import { usualDayMs } from '../../../domain/weeks/attended-day';
import { peopleNeeded } from '../../../domain/weeks/people-needed';
import { setUpStandardAt } from '../../../domain/weeks/review-book';
import { promisesWords } from '../../../i18n/en/promises';
import { formatNumber } from '../../../i18n/format-number';
import { parseDecimal, parseWhole } from '../../../i18n/parse-number';
import { useApp } from '../../app';
import type { PlaceProps } from '../place-props';
import { orderInHand } from './order-in-hand';
import { shopEfficiency } from './shop-efficiency';

const words = promisesWords.people;
const HOUR_MS = 3_600_000;

/** How many people an order takes in a period, with the load before it is rounded. */
export function PeopleNeeded({ days, book }: Pick<PlaceProps, 'days' | 'book'>) {
  const { bench } = useApp();
  const parts = bench.shop.value.parts.filter(({ retired, targetMs }) => !retired && targetMs !== null);
  const { mean } = shopEfficiency(days);
  const order = orderInHand(bench);
  const wanted = order.value.wanted || parts[0]?.id;
  const dayMs = usualDayMs(bench.shop.value.calendar, localDay(bench.clock.now()));
  const [quantities, setQuantities] = useState<Record<string, string>>({});
  const [hours, setHours] = useState(formatNumber(dayMs / HOUR_MS, 2));
  const [efficiency, setEfficiency] = useState(mean === null ? '100' : formatNumber(100 * mean));
  const quantityOf = (id: string) => quantities[id] ?? (id === wanted ? order.value.quantity : '');
  const ordered = parts.map(({ id, targetMs }) => ({
    quantity: parseWhole(quantityOf(id)) ?? 0,
    standardMs: targetMs!,
  }));
  const setUps = {
    quantity: parseWhole(order.value.setUps) ?? 0,
    standardMs: setUpStandardAt(book, Number.MAX_SAFE_INTEGER) ?? 0,
  };
  const attendedMs = (parseDecimal(hours) ?? 0) * HOUR_MS;
  const share = (parseDecimal(efficiency) ?? 0) / 100;
  const isPossible = attendedMs > 0 && share > 0 && ordered.some(({ quantity }) => quantity > 0);
  const isUnread = parts.some(({ id }) => {
    const typed = quantityOf(id).trim();
    return typed !== '' && parseWhole(typed) === null;
  });
  const fault = isUnread
    ? promisesWords.quote.faults.quantity
    : attendedMs > 0 && share > 0
      ? ''
      : words.notAbove;
  const load = isPossible && !isUnread ? peopleNeeded([...ordered, setUps], attendedMs, share) : null;
  if (parts.length === 0) return null;
  return (
    <details class="review-more no-print">
      <summary>
        <h2>{words.title}</h2>
      </summary>
      <div class="stack">
        <div class="review-dates">
          {parts.map(({ id, code }) => (
            <label class="field" key={id}>
              <span>{words.quantity(code)}</span>
              <input
                value={quantityOf(id)}
                inputMode="numeric"
                onInput={(event) => {
                  const quantity = event.currentTarget.value;
                  if (id === wanted) order.value = { ...order.value, quantity };
                  else setQuantities({ ...quantities, [id]: quantity });
                }}
              />
            </label>
          ))}
          <label class="field">
            <span>{promisesWords.quote.setUps}</span>
            <input
              value={order.value.setUps}
              inputMode="numeric"
              onInput={(event) => {
                order.value = { ...order.value, setUps: event.currentTarget.value };
              }}
            />
          </label>
          <label class="field">
            <span>{words.hours}</span>
            <input
              value={hours}
              inputMode="decimal"
              onInput={(event) => setHours(event.currentTarget.value)}
            />
          </label>
          <label class="field">
            <span>{words.efficiency}</span>
            <input
              value={efficiency}
              inputMode="decimal"
              onInput={(event) => setEfficiency(event.currentTarget.value)}
            />
          </label>
        </div>
        {fault && <p role="status">{fault}</p>}
        {load !== null && (
          <p role="status">
            <strong>{words.result(formatNumber(load, 2), words.whole(Math.ceil(load - 1e-9)))}</strong>
          </p>
        )}
        <p class="small quiet">
          {mean === null && words.targetPace} {words.note}
        </p>
      </div>
    </details>
  );
}

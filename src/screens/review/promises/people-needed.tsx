import { useState } from 'preact/hooks';
import { peopleNeeded } from '../../../domain/weeks/people-needed';
import { promisesWords } from '../../../i18n/en/promises';
import { formatNumber } from '../../../i18n/format-number';
import { useApp } from '../../app';
import type { PlaceProps } from '../place-props';
import { shopEfficiency } from './shop-efficiency';

const words = promisesWords.people;
const HOUR_MS = 3_600_000;

/** How many people an order takes in a period, with the load before it is rounded. */
export function PeopleNeeded({ days }: Pick<PlaceProps, 'days'>) {
  const { bench } = useApp();
  const parts = bench.shop.value.parts.filter(({ retired, targetMs }) => !retired && targetMs !== null);
  const { efficiencies, dayMs } = shopEfficiency(days);
  const own = efficiencies.reduce((sum, each) => sum + each, 0) / (efficiencies.length || 1);
  const [quantities, setQuantities] = useState<Record<string, string>>({});
  const [hours, setHours] = useState(formatNumber(dayMs / HOUR_MS, 1));
  const [efficiency, setEfficiency] = useState(own > 0 ? formatNumber(100 * own) : '100');
  const ordered = parts.map(({ id, targetMs }) => ({
    quantity: Math.max(0, Number(quantities[id] ?? 0) || 0),
    standardMs: targetMs!,
  }));
  const attendedMs = (Number(hours.replace(',', '.')) || 0) * HOUR_MS;
  const share = (Number(efficiency.replace(',', '.')) || 0) / 100;
  const isPossible = attendedMs > 0 && share > 0 && ordered.some(({ quantity }) => quantity > 0);
  const load = isPossible ? peopleNeeded(ordered, attendedMs, share) : null;
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
                value={quantities[id] ?? ''}
                inputMode="numeric"
                onInput={(event) => setQuantities({ ...quantities, [id]: event.currentTarget.value })}
              />
            </label>
          ))}
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
        {load !== null && (
          <p role="status">
            <strong>{words.result(formatNumber(load, 2), words.whole(Math.ceil(load - 1e-9)))}</strong>
          </p>
        )}
        <p class="small quiet">{words.note}</p>
      </div>
    </details>
  );
}

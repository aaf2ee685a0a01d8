import { useState } from 'preact/hooks';
import { CAPACITY_DAYS, dailyCapacity, daysKept } from '../../../domain/weeks/daily-capacity';
import { ordinaryDays } from '../../../domain/weeks/ordinary-days';
import { promisesWords as words } from '../../../i18n/en/promises';
import { formatNumber } from '../../../i18n/format-number';
import { parseWhole } from '../../../i18n/parse-number';
import type { PlaceProps } from '../place-props';
import { sinceLastChange } from '../since-last-change';
import { PeopleNeeded } from './people-needed';
import { QuotationsGiven } from './quotations-given';
import { QuoteForm } from './quote-form';
import { SetUpStandard } from './set-up-standard';

const shares = ['0.8', '0.9', '0.95'] as const;

/** What can be promised: parts a day, people, and the time of an order. */
export function PromisesPlace({ days, book }: PlaceProps) {
  const [kept, setKept] = useState<(typeof shares)[number]>('0.9');
  const recent = sinceLastChange(days, book);
  const ordinary = ordinaryDays(recent);
  const capacity = dailyCapacity(
    ordinary.map(({ good }) => good),
    Number(kept),
  );
  const [tried, setTried] = useState('');
  const good = recent.filter(({ done }) => done > 0).map((day) => day.good);
  const promise = parseWhole(tried) ?? 0;
  return (
    <>
      <section class="stack" aria-labelledby="review-capacity-title">
        <h1 id="review-capacity-title">
          {capacity
            ? words.sentence(
                formatNumber(Math.round(capacity.promise)),
                words.inWords[kept],
                capacity.days,
                daysKept(good, Math.round(capacity.promise)),
                good.length,
              )
            : words.tooFew(ordinary.length)}
        </h1>
        {capacity && (
          <p>
            {words.basis(
              capacity.days,
              recent.length,
              `${formatNumber(capacity.mean, 2)} − ${formatNumber(capacity.t, 3)} × ${formatNumber(capacity.deviation, 2)} × √(1 + 1/${capacity.days}) = ${formatNumber(capacity.promise, 1)}`,
            )}
          </p>
        )}
        {capacity && (
          <fieldset class="choices review-parts no-print">
            <legend class="small quiet">{words.keptLabel}</legend>
            {shares.map((each) => (
              <button
                key={each}
                type="button"
                class="choice"
                aria-pressed={kept === each}
                onClick={() => setKept(each)}
              >
                {words.keptOn[each]}
              </button>
            ))}
          </fieldset>
        )}
        {good.length >= CAPACITY_DAYS && (
          <p class={tried === '' ? 'review-tried no-print' : 'review-tried'}>
            <label>
              {words.tries}{' '}
              <input
                value={tried}
                inputMode="numeric"
                size={6}
                onInput={(event) => setTried(event.currentTarget.value)}
              />
            </label>{' '}
            {promise > 0 && words.triesResult(daysKept(good, promise), good.length)}
          </p>
        )}
      </section>
      <QuoteForm days={days} book={book} />
      <QuotationsGiven book={book} />
      <PeopleNeeded days={recent} book={book} />
      <SetUpStandard book={book} />
    </>
  );
}

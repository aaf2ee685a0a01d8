import { useState } from 'preact/hooks';
import { localDay } from '../../domain/day/local-day';
import { type Takt, taktOfDay } from '../../domain/shop/takt-of-day';
import { partTapping as words } from '../../i18n/en/part-tapping';
import { parseWhole } from '../../i18n/parse-number';
import { useApp } from '../app';

/** What calendar and demand leave for a part, worked out in sight; taken as target only when somebody says so. */
export function TaktOffer({ isTaken, take }: { isTaken: boolean; take(taktMs: number): void }) {
  const { bench } = useApp();
  const [typed, setTyped] = useState('');
  const demand = parseWhole(typed) ?? 0;
  const takt = taktOfDay(bench.shop.value.calendar, demand, localDay(bench.clock.now()));
  const isAsked = typed.trim() !== '' || (!takt.ok && takt.fault !== 'no-demand');
  return (
    <fieldset class="stack shop-takt">
      <legend>{words.takt}</legend>
      <div class="row">
        <label class="field">
          <span>{words.demand}</span>
          <input
            value={typed}
            inputMode="numeric"
            autocomplete="off"
            maxLength={8}
            aria-describedby="shop-takt-working"
            onInput={(event) => setTyped(event.currentTarget.value)}
          />
        </label>
        <button
          type="button"
          class="button"
          disabled={!takt.ok}
          onClick={() => {
            if (takt.ok) take(takt.taktMs);
          }}
        >
          {words.take}
        </button>
      </div>
      <p class="number" id="shop-takt-working" role="status">
        {takt.ok
          ? [words.working(takt.netMin, demand, takt.taktMs, takt.day), restText(takt)].join(' ')
          : isAsked
            ? words.faults[takt.fault]
            : ''}{' '}
        {isTaken && words.taken}
      </p>
    </fieldset>
  );
}

/** What a day just on takt comes to where rests count as attended. */
function restText({ netMin, attendedMin }: Extract<Takt, { ok: true }>): string {
  return attendedMin > netMin ? words.rests(netMin, attendedMin) : '';
}

import { useState } from 'preact/hooks';
import { countParts } from '../../application/turn/count-parts';
import type { Turn } from '../../domain/turn/turn';
import { putRight as words } from '../../i18n/en/put-right';
import { useApp } from '../app';
import type { Wanted } from './put-right';

/** Parts as they lie on the trolley: how much of the work was tapped can be told from it. */
export function CountRight({ turn, ask }: { turn: Turn; ask(wanted: Wanted): void }) {
  const { bench } = useApp();
  const [count, setCount] = useState(turn.countedParts === null ? '' : String(turn.countedParts));
  const isNumber = /^\d{1,5}$/.test(count.trim());
  const keep = (event: Event) => {
    event.preventDefault();
    if (!isNumber) return;
    ask({
      word: words.keepCount,
      isAnswer: true,
      told: words.countKept,
      say: ({ by }) => countParts(bench, turn.id, Number(count), by),
    });
  };
  return (
    <form class="settle-span" onSubmit={keep}>
      <label class="field">
        <span>{words.counted}</span>
        <input
          value={count}
          inputMode="numeric"
          maxLength={5}
          autocomplete="off"
          onInput={(event) => setCount(event.currentTarget.value)}
        />
      </label>
      <button type="submit" class="button" disabled={!isNumber}>
        {words.keepCount}
      </button>
      <p class="quiet small">{words.countNote(turn.cycles.length)}</p>
    </form>
  );
}

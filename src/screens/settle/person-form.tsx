import { useState } from 'preact/hooks';
import { correctPerson } from '../../application/turn/correct-person';
import { knownCode } from '../../domain/shop/known-code';
import { settle as words } from '../../i18n/en/settle';
import { useApp } from '../app';
import type { Who } from './question';

/** Another person was at the station: whose turn it was. */
export function PersonForm({ turn, who, close }: { turn: string; who: Who; close(): void }) {
  const { bench, isReadOnly } = useApp();
  const [code, setCode] = useState('');
  const isReady = !isReadOnly && code.trim() !== '';
  const putRight = (event: Event) => {
    event.preventDefault();
    if (!isReady) return;
    correctPerson(bench, turn, knownCode(bench.shop.value.people, code), who);
    close();
  };
  return (
    <form class="settle-form" onSubmit={putRight}>
      <label class="field">
        <span>{words.rightCode}</span>
        <input
          value={code}
          maxLength={16}
          autocomplete="off"
          disabled={isReadOnly}
          onInput={(event) => setCode(event.currentTarget.value)}
        />
      </label>
      <div class="row">
        <button type="submit" class="button" disabled={!isReady}>
          {words.putRight}
        </button>
        <button type="button" class="button" onClick={close}>
          {words.cancel}
        </button>
      </div>
    </form>
  );
}

import { useState } from 'preact/hooks';
import { correctPerson } from '../../application/turn/correct-person';
import { knownCode } from '../../domain/shop/known-code';
import { settle as words } from '../../i18n/en/settle';
import { useApp } from '../app';
import type { Who } from './question';

interface Props {
  readonly turn: string;
  /** From when on it was the other person, milliseconds since the turn began. */
  readonly fromMs: number;
  readonly who: Who;
  close(): void;
}

/** Another person was at the station: who it was from then on. */
export function PersonForm({ turn, fromMs, who, close }: Props) {
  const { bench, isReadOnly } = useApp();
  const [code, setCode] = useState('');
  const isReady = !isReadOnly && code.trim() !== '';
  const putRight = (event: Event) => {
    event.preventDefault();
    if (!isReady) return;
    correctPerson(bench, turn, knownCode(bench.shop.value.people, code), who, { fromMs });
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

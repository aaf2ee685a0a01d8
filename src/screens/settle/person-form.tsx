import { useState } from 'preact/hooks';
import { correctPerson } from '../../application/turn/correct-person';
import { settle as words } from '../../i18n/en/settle';
import { useApp } from '../app';

interface Props {
  readonly turn: string;
  readonly answers: { readonly by: string; readonly why: string } | null;
  close(): void;
}

/** Another person was at the station: whose turn it was. */
export function PersonForm({ turn, answers, close }: Props) {
  const { bench, isReadOnly } = useApp();
  const [code, setCode] = useState('');
  const isReady = !isReadOnly && code.trim() !== '' && answers !== null && answers.why !== '';
  const putRight = (event: Event) => {
    event.preventDefault();
    if (!isReady) return;
    correctPerson(bench, turn, code.trim(), answers);
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
      {(!answers || answers.why === '') && <p class="quiet small">{words.reasonHint}</p>}
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

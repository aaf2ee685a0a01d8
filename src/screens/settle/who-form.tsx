import { useState } from 'preact/hooks';
import { knownCode } from '../../domain/shop/known-code';
import { settle as words } from '../../i18n/en/settle';
import { useApp } from '../app';
import type { Who } from './question';

interface Props {
  readonly who: Who;
  /** What sending it does, in words. */
  readonly submit: string;
  readonly needsWhy: boolean;
  /** Why it may be, beside what was told or noted. */
  readonly reasons?: readonly string[];
  done(who: Who): void;
  close(): void;
}

/** Asked with the first answer: who says so, and where a part or a person changes, why. */
export function WhoForm({
  who,
  submit,
  needsWhy,
  reasons: likely = words.chosenWrongly,
  done,
  close,
}: Props) {
  const { bench } = useApp();
  const [by, setBy] = useState(who.by);
  const [why, setWhy] = useState(who.why);
  const [isMissing, setMissing] = useState(false);
  // It is asked once; at the station somebody else than the operator may stand there.
  const [isCodeAsked, setCodeAsked] = useState(who.by === '' || who.isAtStation);
  const reasons = [...likely, ...(who.isAtStation ? [] : [words.toldByOperator]), words.notedOnPaper];
  const send = (event: Event) => {
    event.preventDefault();
    if (by.trim() === '' || (needsWhy && why.trim() === '')) return setMissing(true);
    done({ ...who, by: knownCode(bench.shop.value.people, by), why: why.trim() });
  };
  return (
    <form class="settle-form" onSubmit={send}>
      <div class="settle-who">
        {isCodeAsked ? (
          <label class="field">
            <span>{words.yourCode}</span>
            <input
              value={by}
              maxLength={16}
              autocomplete="off"
              ref={(field) => {
                if (field?.value === '') field.focus();
              }}
              onInput={(event) => setBy(event.currentTarget.value)}
            />
          </label>
        ) : (
          <p>
            {words.answersAs(by)}{' '}
            <button type="button" class="button plain" onClick={() => setCodeAsked(true)}>
              {words.anotherCode}
            </button>
          </p>
        )}
        {needsWhy && (
          <label class="field">
            <span>{words.reason}</span>
            <input
              value={why}
              maxLength={120}
              autocomplete="off"
              onInput={(event) => setWhy(event.currentTarget.value)}
            />
          </label>
        )}
      </div>
      {needsWhy && (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a wrapping row everywhere
        <div class="choices" role="group" aria-label={words.reason}>
          {reasons.map((reason) => (
            <button
              type="button"
              key={reason}
              class="choice"
              aria-pressed={reason === why}
              onClick={() => setWhy(reason)}
            >
              {reason}
            </button>
          ))}
        </div>
      )}
      <p class={isMissing ? 'fault' : 'quiet small'} role="status">
        {needsWhy ? (isCodeAsked ? words.whoAndWhyHint : words.whyHint) : words.whoHint}
      </p>
      <div class="row">
        <button type="submit" class="button">
          {submit}
        </button>
        <button type="button" class="button" onClick={close}>
          {words.cancel}
        </button>
      </div>
    </form>
  );
}

import { useState } from 'preact/hooks';
import { addPerson } from '../../application/shop/add-person';
import { knownCode } from '../../domain/shop/known-code';
import { turnSetup as words } from '../../i18n/en/turn-setup';
import { useApp } from '../app';
import { lastFirst } from './last-first';

interface Props {
  readonly people: readonly string[];
  readonly last: string;
  readonly chosen: string;
  choose(code: string): void;
}

/** The codes of the shop, and a new one added right here. */
export function PersonChoice({ people, last, chosen, choose }: Props) {
  const { bench, isReadOnly } = useApp();
  const [isAdding, setAdding] = useState(false);
  const [code, setCode] = useState('');
  const isOpen = isAdding || people.length === 0;

  const add = (event: Event) => {
    event.preventDefault();
    if (code.trim() === '') return;
    addPerson(bench, code);
    choose(knownCode(people, code));
    close();
  };
  const close = () => {
    setCode('');
    setAdding(false);
  };

  return (
    <section class="stack">
      <h2 id="pace-who">{words.who}</h2>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a wrapping row everywhere */}
      <div class="choices" role="group" aria-labelledby="pace-who">
        {lastFirst(people, (person) => person === last).map((person) => (
          <button
            type="button"
            key={person}
            class="choice pace-choice"
            aria-pressed={person === chosen}
            onClick={() => choose(person)}
          >
            <strong>{person}</strong>
            {person === last && <span class="small">{words.lastTurn}</span>}
          </button>
        ))}
        {!isOpen && (
          <button
            type="button"
            class="button pace-other"
            disabled={isReadOnly}
            onClick={() => setAdding(true)}
          >
            {words.anotherPerson}
          </button>
        )}
      </div>
      {isOpen && (
        <form class="pace-add" onSubmit={add}>
          <label class="field">
            <span>{words.personCode}</span>
            <input
              value={code}
              maxLength={16}
              autocomplete="off"
              autocapitalize="characters"
              enterkeyhint="done"
              disabled={isReadOnly}
              onInput={(event) => setCode(event.currentTarget.value)}
            />
          </label>
          <button type="submit" class="button" disabled={isReadOnly || code.trim() === ''}>
            {words.addPerson}
          </button>
          {isAdding && people.length > 0 && (
            <button type="button" class="button" onClick={close}>
              {words.cancel}
            </button>
          )}
          <p class="quiet small">{words.whoHint}</p>
        </form>
      )}
    </section>
  );
}

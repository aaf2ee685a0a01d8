import { useState } from 'preact/hooks';
import { addPerson } from '../../application/shop/add-person';
import { knownCode } from '../../domain/shop/known-code';
import { turnSetup as words } from '../../i18n/en/turn-setup';
import { useApp } from '../app';
import { useFocus } from '../use-focus';
import { lastFirst } from './last-first';

/** A code stands on buttons and in columns. */
const LONGEST = 16;

interface Props {
  readonly title?: string;
  /** Somebody has to be chosen; without anybody to choose from a code is asked for at once. */
  readonly isNeeded?: boolean;
  readonly people: readonly string[];
  readonly last: string;
  readonly chosen: string;
  choose(code: string): void;
  /** What is being typed for a code that is not there yet; empty for nothing. */
  typing?(code: string): void;
}

/** The codes of the shop, and a new one added right here. */
export function PersonChoice(props: Props) {
  const { title = words.who, isNeeded = true, people, last, chosen, choose, typing } = props;
  const { bench, isReadOnly } = useApp();
  const [isAdding, setAdding] = useState(false);
  const [code, setCode] = useState('');
  const field = useFocus(isAdding);
  const isOpen = isAdding || (isNeeded && people.length === 0);

  const add = (event: Event) => {
    event.preventDefault();
    if (code.trim() === '') return;
    addPerson(bench, code);
    choose(knownCode(people, code));
    close();
  };
  const type = (typed: string) => {
    setCode(typed);
    typing?.(typed.trim());
  };
  const close = () => {
    type('');
    setAdding(false);
  };

  return (
    <section class="stack">
      <h2 id="pace-who">{title}</h2>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a wrapping row everywhere */}
      <div class="choices" role="group" aria-labelledby="pace-who" hidden={isAdding}>
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
              ref={field}
              value={code}
              maxLength={LONGEST}
              autocomplete="off"
              autocapitalize="characters"
              enterkeyhint="done"
              disabled={isReadOnly}
              onInput={(event) => type(event.currentTarget.value)}
            />
          </label>
          <button type="submit" class="button" disabled={isReadOnly || code.trim() === ''}>
            {words.addPerson}
          </button>
          {isAdding && (people.length > 0 || !isNeeded) && (
            <button type="button" class="button" onClick={close}>
              {words.cancel}
            </button>
          )}
          <p class="quiet small" role="status">
            {code.length < LONGEST ? words.whoHint : words.codeIsFull(LONGEST)}
          </p>
        </form>
      )}
    </section>
  );
}

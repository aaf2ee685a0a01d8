import { useState } from 'preact/hooks';
import { addPerson } from '../../application/shop/add-person';
import { removePerson } from '../../application/shop/remove-person';
import { isSameCode } from '../../domain/shop/known-code';
import { shop } from '../../i18n/en/shop';
import { useApp } from '../app';
import { useKeptDraft } from './use-kept-draft';

const words = shop.people;
/** Room for a code, too little for most names. */
const LONGEST_CODE = 8;

/** The codes of the people who work at the station. A new one is no standard: work does not wait for the PIN. */
export function PeopleList({ isShut }: { isShut: boolean }) {
  const { bench, isReadOnly } = useApp();
  const { people } = bench.shop.value;
  const [draft, setCode] = useKeptDraft<string>(bench, 'person');
  const code = draft ?? '';
  const [told, setTold] = useState('');

  const add = (event: Event) => {
    event.preventDefault();
    const wanted = code.trim();
    if (wanted === '') return setTold(words.missing);
    const known = people.find((each) => isSameCode(each, wanted));
    if (known) return setTold(words.known(known));
    addPerson(bench, wanted);
    setCode(null);
    setTold(words.added(wanted));
  };
  const remove = (wanted: string) => {
    removePerson(bench, wanted);
    setTold(words.removed(wanted));
  };
  return (
    <section class="stack" aria-labelledby="shop-people-title">
      <h2 id="shop-people-title">{words.title}</h2>
      <p class="small quiet">{words.note}</p>
      {people.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <ul class="shop-list">
          {people.map((each) => (
            <li key={each} class="row spread">
              <strong>{each}</strong>
              <button
                type="button"
                class="button plain"
                aria-label={words.remove(each)}
                disabled={isReadOnly || isShut}
                onClick={() => remove(each)}
              >
                {words.removeShort}
              </button>
            </li>
          ))}
        </ul>
      )}
      <form class="row shop-add" onSubmit={add} noValidate>
        <label class="field">
          <span>{words.code}</span>
          <input
            value={code}
            autocomplete="off"
            autocapitalize="characters"
            maxLength={LONGEST_CODE}
            onInput={(event) => setCode(event.currentTarget.value)}
          />
        </label>
        <button type="submit" class="button" disabled={isReadOnly}>
          {words.add}
        </button>
      </form>
      <p role="status">{told}</p>
    </section>
  );
}

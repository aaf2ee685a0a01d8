import { useState } from 'preact/hooks';
import { addPerson } from '../../application/shop/add-person';
import { removePerson } from '../../application/shop/remove-person';
import { shop } from '../../i18n/en/shop';
import { useApp } from '../app';

const words = shop.people;
/** Room for a code, too little for most names. */
const LONGEST_CODE = 8;

/** The codes of the people who work at the station. */
export function PeopleList() {
  const { bench, isReadOnly } = useApp();
  const { people } = bench.shop.value;
  const [code, setCode] = useState('');
  const [told, setTold] = useState('');

  const add = (event: Event) => {
    event.preventDefault();
    const wanted = code.trim();
    if (wanted === '') return setTold(words.missing);
    if (people.includes(wanted)) return setTold(words.known(wanted));
    addPerson(bench, wanted);
    setCode('');
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
                disabled={isReadOnly}
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

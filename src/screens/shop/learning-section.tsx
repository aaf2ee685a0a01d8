import { useState } from 'preact/hooks';
import { setLearning } from '../../application/shop/set-learning';
import { learning as words } from '../../i18n/en/learning';
import { useApp } from '../app';

/** Whose next parts are made while learning, and how many. */
export function LearningSection() {
  const { bench, isReadOnly } = useApp();
  const { people, learners } = bench.shop.value;
  const [code, setCode] = useState('');
  const [count, setCount] = useState('');
  const [isMissing, setMissing] = useState(false);
  const others = people.filter((each) => !learners.some((learner) => learner.code === each));
  const mark = (event: Event) => {
    event.preventDefault();
    const isFine = code !== '' && /^[1-9]\d{0,3}$/.test(count.trim());
    setMissing(!isFine);
    if (!isFine) return;
    setLearning(bench, code, Number(count));
    setCode('');
    setCount('');
  };
  if (people.length === 0) return null;
  return (
    <section class="stack" aria-labelledby="shop-learning-title">
      <h2 id="shop-learning-title">{words.title}</h2>
      <p class="small quiet">{words.note}</p>
      {learners.length > 0 && (
        <ul class="shop-list">
          {learners.map((learner) => (
            <li key={learner.code} class="row spread">
              <span class="number">{words.line(learner.code, learner.parts)}</span>
              <button
                type="button"
                class="button plain"
                aria-label={words.endOf(learner.code)}
                disabled={isReadOnly}
                onClick={() => setLearning(bench, learner.code, 0)}
              >
                {words.end}
              </button>
            </li>
          ))}
        </ul>
      )}
      {others.length > 0 && (
        <form class="row shop-add" onSubmit={mark} noValidate>
          <label class="field">
            <span>{words.who}</span>
            <select value={code} onChange={(event) => setCode(event.currentTarget.value)}>
              <option value="" />
              {others.map((each) => (
                <option key={each} value={each}>
                  {each}
                </option>
              ))}
            </select>
          </label>
          <label class="field">
            <span>{words.howMany}</span>
            <input
              value={count}
              inputMode="numeric"
              maxLength={4}
              autocomplete="off"
              onInput={(event) => setCount(event.currentTarget.value)}
            />
          </label>
          <button type="submit" class="button" disabled={isReadOnly}>
            {words.set}
          </button>
        </form>
      )}
      {isMissing && (
        <p class="fault" role="alert">
          {words.choose}
        </p>
      )}
    </section>
  );
}

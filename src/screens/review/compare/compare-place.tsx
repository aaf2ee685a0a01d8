import { useState } from 'preact/hooks';
import { beforeAfterWords as words } from '../../../i18n/en/before-after';
import { useApp } from '../../app';
import type { PlaceProps } from '../place-props';
import { CompareForm } from './compare-form';
import { ComparisonResult } from './comparison-result';
import { OldTimes } from './old-times';

/** Did the new method help, by how much, how sure? What was fixed last stands first. */
export function ComparePlace({ days, book }: PlaceProps) {
  const { isReadOnly } = useApp();
  const [chosen, setChosen] = useState('');
  const { comparisons } = book;
  const shown = comparisons.find(({ key }) => key === chosen) ?? comparisons.at(-1);
  const others = comparisons.filter((each) => each !== shown);
  return (
    <>
      {days.length > 0 &&
        (shown ? (
          <ComparisonResult key={shown.key} terms={shown} book={book} />
        ) : (
          <div class="stack review-head">
            <h1>{words.titleNone}</h1>
            <p>{words.hint}</p>
          </div>
        ))}
      {!isReadOnly && days.length > 0 && (
        <CompareForm days={days} book={book} isOpen={!shown} done={() => setChosen('')} />
      )}
      {others.length > 0 && (
        <section class="stack no-print" aria-labelledby="review-compared-title">
          <h2 id="review-compared-title">{words.others}</h2>
          <div class="choices">
            {[...others].reverse().map(({ key, title }) => (
              <button key={key} type="button" class="choice" onClick={() => setChosen(key)}>
                {title}
              </button>
            ))}
          </div>
        </section>
      )}
      <OldTimes days={days} book={book} />
    </>
  );
}

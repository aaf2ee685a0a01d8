import { useState } from 'preact/hooks';
import { withdrawComparison } from '../../../application/review/withdraw-comparison';
import { localDay } from '../../../domain/day/local-day';
import type { Stamp } from '../../../domain/records/stamp';
import { beforeAfterWords as words } from '../../../i18n/en/before-after';
import { review } from '../../../i18n/en/review';
import { formatDay } from '../../../i18n/format-day';
import { useApp } from '../../app';
import { AskedButton } from '../asked-button';
import type { PlaceProps } from '../place-props';
import { CompareForm } from './compare-form';
import { ComparisonResult } from './comparison-result';
import { OldTimes } from './old-times';

/** Did the new method help, by how much, how sure? What was fixed last stands first. */
export function ComparePlace({ days, book }: PlaceProps) {
  const { bench, isReadOnly } = useApp();
  const [chosen, setChosen] = useState('');
  const { comparisons } = book;
  const shown =
    comparisons.find(({ key }) => key === chosen) ?? comparisons.findLast(({ withdrawn }) => !withdrawn);
  const others = comparisons.filter((each) => each !== shown);
  const show = (key: string) => {
    setChosen(key);
    // What is asked for below is answered at the head.
    document.querySelector('.shell-main')?.scrollTo({ top: 0 });
  };
  return (
    <>
      {days.length > 0 &&
        (shown ? (
          <>
            <ComparisonResult key={shown.key} terms={shown} book={book} />
            {!isReadOnly && !shown.withdrawn && (
              <div class="row">
                <AskedButton
                  key={shown.key}
                  label={review.takeAway.comparisonBack}
                  of={shown.title}
                  question={review.takeAway.comparison}
                  act={() => withdrawComparison(bench, shown.key, '')}
                />
              </div>
            )}
          </>
        ) : (
          <div class="stack review-head">
            <h1>{words.titleNone}</h1>
            <p>{words.hint}</p>
          </div>
        ))}
      {!isReadOnly && days.length > 0 && (
        <CompareForm days={days} book={book} isOpen={!shown} done={() => show('')} />
      )}
      {others.length > 0 && (
        <section class="stack no-print" aria-labelledby="review-compared-title">
          <h2 id="review-compared-title">{words.others}</h2>
          <div class="choices">
            {[...others].reverse().map(({ key, title, withdrawn }) => (
              <button key={key} type="button" class="choice" onClick={() => show(key)}>
                {withdrawn ? `${title}, ${wasBack(withdrawn)}` : title}
              </button>
            ))}
          </div>
        </section>
      )}
      <OldTimes days={days} book={book} />
    </>
  );
}

function wasBack({ at }: { readonly at: Stamp }): string {
  return review.takeAway.wasBack(formatDay(localDay(at), 'short'));
}

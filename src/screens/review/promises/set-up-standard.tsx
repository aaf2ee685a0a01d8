import { useState } from 'preact/hooks';
import { setSetUpStandard } from '../../../application/review/set-set-up-standard';
import { readTargetTime } from '../../../domain/shop/read-target-time';
import { type ReviewBook, setUpStandardAt } from '../../../domain/weeks/review-book';
import { promisesWords } from '../../../i18n/en/promises';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';
import { useApp } from '../../app';
import { PinAsk } from '../../latch/pin-ask';
import { useLatch } from '../../latch/use-latch';

const words = promisesWords.setUp;

/** What a set-up earns, from now on. */
export function SetUpStandard({ book }: { book: ReviewBook }) {
  const { bench, isReadOnly } = useApp();
  const [typed, setTyped] = useState('');
  const standardMs = setUpStandardAt(book, Number.MAX_SAFE_INTEGER);
  const isShut = useLatch();
  const read = readTargetTime(typed);
  const save = (event: Event) => {
    event.preventDefault();
    if (!read.ok) return;
    setSetUpStandard(bench, read.targetMs);
    setTyped('');
  };
  return (
    <details class="review-more no-print">
      <summary>
        <h2>{words.title}</h2>
      </summary>
      <PinAsk />
      <form class="stack review-form" onSubmit={save}>
        <p>{standardMs === null ? words.none : words.now(roundedClockFace(standardMs))}</p>
        {!isReadOnly && (
          <fieldset class="stack latch-hold" disabled={isShut}>
            <label class="field">
              <span>{words.label}</span>
              <input value={typed} onInput={(event) => setTyped(event.currentTarget.value)} />
            </label>
            {typed !== '' && !read.ok && <p role="status">{promisesWords.quote.notATime}</p>}
            <div class="row">
              <button type="submit" class="button" disabled={!read.ok}>
                {words.save}
              </button>
            </div>
          </fieldset>
        )}
        <p class="small quiet">{words.note}</p>
      </form>
    </details>
  );
}

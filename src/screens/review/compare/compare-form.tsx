import { useState } from 'preact/hooks';
import { fixComparison } from '../../../application/review/fix-comparison';
import { partsMade } from '../../../domain/day/parts-made';
import type { ReviewBook } from '../../../domain/weeks/review-book';
import { beforeAfterWords } from '../../../i18n/en/before-after';
import { parseDecimal } from '../../../i18n/parse-number';
import { useApp } from '../../app';
import type { PlaceProps } from '../place-props';
import { periodsAround } from './periods-around';

const words = beforeAfterWords.form;

interface Props {
  readonly days: PlaceProps['days'];
  readonly book: ReviewBook;
  readonly isOpen: boolean;
  readonly done: () => void;
}

/** What to compare, and what matters: written down before anything is shown. */
export function CompareForm({ days, book, isOpen, done }: Props) {
  const { bench } = useApp();
  const suggested = periodsAround(
    days.map(({ day }) => day),
    book.notes.filter(({ isChange }) => isChange),
  );
  const [title, setTitle] = useState(suggested.title);
  const [part, setPart] = useState('');
  const [periods, setPeriods] = useState(suggested.periods);
  const [threshold, setThreshold] = useState('');
  const [areDaysTyped, setDaysTyped] = useState(false);
  const [by, setBy] = useState('');
  const thresholdPct = parseDecimal(threshold) ?? 0;
  const { beforeFrom, beforeTo, afterFrom, afterTo } = periods;
  const areInOrder = beforeFrom <= beforeTo && beforeTo < afterFrom && afterFrom <= afterTo;
  const isReady = title.trim() !== '' && areInOrder && thresholdPct > 0 && thresholdPct < 100;
  const save = (event: Event) => {
    event.preventDefault();
    fixComparison(bench, { title, part: part || null, ...periods, thresholdPct, by });
    done();
  };
  return (
    <details class="review-more no-print" open={isOpen}>
      <summary>
        <h2>{words.open}</h2>
      </summary>
      <form class="stack review-form" onSubmit={save}>
        <label class="field">
          <span>{words.title}</span>
          <input value={title} maxLength={120} onInput={(event) => setTitle(event.currentTarget.value)} />
        </label>
        <label class="field">
          <span>{words.part}</span>
          <select value={part} onChange={(event) => setPart(event.currentTarget.value)}>
            <option value="">{words.allParts}</option>
            {partsMade(days).map((each) => (
              <option key={each.part} value={each.part}>
                {each.partCode}
              </option>
            ))}
          </select>
        </label>
        <div class="review-dates review-periods">
          {(['beforeFrom', 'beforeTo', 'afterFrom', 'afterTo'] as const).map((name) => (
            <label class="field" key={name}>
              <span>{words[name]}</span>
              <input
                type="date"
                value={periods[name]}
                onInput={(event) => {
                  setPeriods({ ...periods, [name]: event.currentTarget.value });
                  setDaysTyped(true);
                }}
              />
            </label>
          ))}
        </div>
        {areDaysTyped && !areInOrder && <p role="status">{words.order}</p>}
        <div class="review-dates">
          <label class="field">
            <span>{words.threshold}</span>
            <input
              aria-describedby="review-threshold-hint"
              value={threshold}
              inputMode="decimal"
              onInput={(event) => setThreshold(event.currentTarget.value)}
            />
          </label>
          <label class="field">
            <span>{words.by}</span>
            <input value={by} maxLength={20} onInput={(event) => setBy(event.currentTarget.value)} />
          </label>
        </div>
        <p class="small quiet" id="review-threshold-hint">
          {words.thresholdHint}
        </p>
        <div class="row">
          <button type="submit" class="button strong" disabled={!isReady}>
            {words.save}
          </button>
        </div>
      </form>
    </details>
  );
}

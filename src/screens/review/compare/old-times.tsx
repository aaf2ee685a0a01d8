import { useState } from 'preact/hooks';
import { timeOldMethod } from '../../../application/review/time-old-method';
import { readTargetTime } from '../../../domain/shop/read-target-time';
import { lessTime } from '../../../domain/weeks/less-time';
import type { OldMethodTiming } from '../../../domain/weeks/review-book';
import { runFigures } from '../../../domain/weeks/run-figures';
import { beforeAfterWords } from '../../../i18n/en/before-after';
import { formatNumber } from '../../../i18n/format-number';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';
import { useApp } from '../../app';
import type { PlaceProps } from '../place-props';
import { sinceLastChange } from '../since-last-change';

const words = beforeAfterWords.old;
const MINUTE_MS = 60_000;

/** Times of the old method that were taken by hand, beside what the tablet has recorded since. */
export function OldTimes({ days, book }: Pick<PlaceProps, 'days' | 'book'>) {
  const { isReadOnly } = useApp();
  return (
    <section class="stack" aria-labelledby="review-old-title">
      <h2 id="review-old-title">{words.title}</h2>
      <p class="quiet">{words.says}</p>
      {book.oldTimings.map((timing) => (
        <OldTime key={timing.key} timing={timing} days={sinceLastChange(days, book)} />
      ))}
      {!isReadOnly && <OldTimeForm />}
    </section>
  );
}

function OldTime({ timing, days }: { timing: OldMethodTiming; days: PlaceProps['days'] }) {
  const { bench } = useApp();
  const code = bench.shop.value.parts.find(({ id }) => id === timing.part)?.code ?? timing.part;
  const made = runFigures(days, { part: timing.part });
  if (made.length === 0) return <p>{words.noneMade(code)}</p>;
  const nowMs = (made.reduce((sum, { value }) => sum + value, 0) / made.length) * MINUTE_MS;
  const { lessShare, timesTheRate } = lessTime(timing.perPartMs, nowMs);
  return (
    <div class="panel stack review-head">
      <p>
        <strong>
          {words.result(
            code,
            roundedClockFace(timing.perPartMs),
            roundedClockFace(nowMs),
            formatNumber(100 * Math.abs(lessShare)),
            lessShare >= 0 ? 'less' : 'more',
            formatNumber(timesTheRate, 2),
          )}
        </strong>
      </p>
      <p class="small quiet">
        {words.takenAs(timing.source || words.noSource)} {words.now(made.length)} {words.caution}
      </p>
    </div>
  );
}

function OldTimeForm() {
  const { bench } = useApp();
  const parts = bench.shop.value.parts.filter(({ retired }) => !retired);
  const [part, setPart] = useState(parts[0]?.id ?? '');
  const [typed, setTyped] = useState('');
  const [source, setSource] = useState('');
  const [by, setBy] = useState('');
  const read = readTargetTime(typed);
  const save = (event: Event) => {
    event.preventDefault();
    if (!read.ok) return;
    timeOldMethod(bench, { part, perPartMs: read.targetMs, source, by });
    setTyped('');
  };
  return (
    <details class="review-more no-print">
      <summary>
        <h3>{words.write}</h3>
      </summary>
      <form class="stack review-form" onSubmit={save}>
        <label class="field">
          <span>{words.part}</span>
          <select value={part} onChange={(event) => setPart(event.currentTarget.value)}>
            {parts.map(({ id, code }) => (
              <option key={id} value={id}>
                {code}
              </option>
            ))}
          </select>
        </label>
        <label class="field">
          <span>{words.time}</span>
          <input value={typed} onInput={(event) => setTyped(event.currentTarget.value)} />
        </label>
        {typed !== '' && !read.ok && <p role="status">{words.notATime}</p>}
        <label class="field">
          <span>{words.source}</span>
          <input value={source} maxLength={120} onInput={(event) => setSource(event.currentTarget.value)} />
        </label>
        <label class="field">
          <span>{words.by}</span>
          <input value={by} maxLength={20} onInput={(event) => setBy(event.currentTarget.value)} />
        </label>
        <div class="row">
          <button type="submit" class="button strong" disabled={!read.ok || part === ''}>
            {words.save}
          </button>
        </div>
      </form>
    </details>
  );
}

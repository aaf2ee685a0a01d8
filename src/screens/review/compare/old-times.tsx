import { removeOldTiming } from '../../../application/review/remove-old-timing';
import { lessTime } from '../../../domain/weeks/less-time';
import type { OldMethodTiming } from '../../../domain/weeks/review-book';
import { runFigures } from '../../../domain/weeks/run-figures';
import { beforeAfterWords } from '../../../i18n/en/before-after';
import { review } from '../../../i18n/en/review';
import { formatNumber } from '../../../i18n/format-number';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';
import { useApp } from '../../app';
import { AskedButton } from '../asked-button';
import type { PlaceProps } from '../place-props';
import { sinceLastChange } from '../since-last-change';
import { OldTimeForm } from './old-time-form';

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
      {!isReadOnly && <OldTimeForm isOpen={days.length === 0} />}
    </section>
  );
}

function OldTime({ timing, days }: { timing: OldMethodTiming; days: PlaceProps['days'] }) {
  const { bench, isReadOnly } = useApp();
  const code = bench.shop.value.parts.find(({ id }) => id === timing.part)?.code ?? timing.part;
  const made = runFigures(days, { part: timing.part });
  const tappedMs =
    made.length === 0 ? null : (made.reduce((sum, { value }) => sum + value, 0) / made.length) * MINUTE_MS;
  const nowMs = timing.newPerPartMs ?? tappedMs;
  const before = roundedClockFace(timing.perPartMs);
  return (
    <div class="panel stack review-head">
      <p>
        <strong>
          {nowMs === null ? words.noneMade(code, before) : inWords(code, timing.perPartMs, nowMs)}
        </strong>
      </p>
      <p class="small quiet">
        {words.takenAs(timing.source || words.noSource)}{' '}
        {timing.newPerPartMs !== undefined ? words.nowByHand : made.length > 0 && words.now(made.length)}{' '}
        {words.caution}
      </p>
      {!isReadOnly && (
        <div class="row">
          <AskedButton
            label={review.takeAway.away}
            of={`${code}, ${before}`}
            question={review.takeAway.timing}
            act={() => removeOldTiming(bench, timing.key, '')}
          />
        </div>
      )}
    </div>
  );
}

function inWords(code: string, beforeMs: number, nowMs: number): string {
  const { lessShare, timesTheRate } = lessTime(beforeMs, nowMs);
  return words.result(
    code,
    roundedClockFace(beforeMs),
    roundedClockFace(nowMs),
    formatNumber(100 * Math.abs(lessShare)),
    lessShare >= 0 ? 'less' : 'more',
    formatNumber(timesTheRate, 2),
  );
}

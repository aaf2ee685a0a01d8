import { withdrawQuotation } from '../../../application/review/withdraw-quotation';
import { localDay } from '../../../domain/day/local-day';
import { isOverhauled } from '../../../domain/weeks/quote-time';
import type { ReviewBook } from '../../../domain/weeks/review-book';
import { promisesWords } from '../../../i18n/en/promises';
import { review } from '../../../i18n/en/review';
import { formatDay } from '../../../i18n/format-day';
import { formatNumber } from '../../../i18n/format-number';
import { useApp } from '../../app';
import { AskedButton } from '../asked-button';

const words = promisesWords.quote;
const HOUR_MS = 3_600_000;

const hours = (ms: number) => promisesWords.hours(formatNumber(ms / HOUR_MS, 1));

/** What was quoted, newest first, and whether the standard behind it still stands. */
export function QuotationsGiven({ book }: { book: ReviewBook }) {
  const { bench, isReadOnly } = useApp();
  const { parts } = bench.shop.value;
  return (
    <section class="stack" aria-labelledby="review-given-title">
      <h2 id="review-given-title">{words.given}</h2>
      {book.quotations.length === 0 && <p>{words.none}</p>}
      <ul class="review-list">
        {[...book.quotations].reverse().map((quotation) => {
          const { key, at, quantity, partCode, totalMs, lowMs, highMs, due, note, by, part, withdrawn } =
            quotation;
          const isOld = isOverhauled(
            quotation,
            parts.find(({ id }) => id === part),
          );
          return (
            <li key={key} class="row">
              <span>
                {words.line(formatDay(localDay(at)), formatNumber(quantity), partCode, hours(totalMs))}
                {lowMs !== null && highMs !== null && ` ${words.range(hours(lowMs), hours(highMs))}`}
                {due && `, ${words.dueLine(formatDay(due.finish), formatDay(due.latest ?? due.finish))}`}
                {[note, by].filter(Boolean).map((text) => `, ${text}`)}
                {withdrawn ? (
                  <strong>, {review.takeAway.wasBack(formatDay(localDay(withdrawn.at)))}</strong>
                ) : (
                  <small class="quiet"> {isOld ? words.overhauled : words.stands}</small>
                )}
              </span>
              {!isReadOnly && !withdrawn && (
                <AskedButton
                  label={review.takeAway.back}
                  of={`${formatNumber(quantity)} × ${partCode}`}
                  question={review.takeAway.quotation}
                  act={() => withdrawQuotation(bench, key, '')}
                />
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}

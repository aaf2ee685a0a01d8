import { localDay } from '../../../domain/day/local-day';
import { isOverhauled } from '../../../domain/weeks/quote-time';
import type { ReviewBook } from '../../../domain/weeks/review-book';
import { promisesWords } from '../../../i18n/en/promises';
import { formatDay } from '../../../i18n/format-day';
import { formatNumber } from '../../../i18n/format-number';
import { useApp } from '../../app';

const words = promisesWords.quote;
const HOUR_MS = 3_600_000;

const hours = (ms: number) => promisesWords.hours(formatNumber(ms / HOUR_MS, 1));

/** What was quoted, newest first, and whether the standard behind it still stands. */
export function QuotationsGiven({ book }: { book: ReviewBook }) {
  const { bench } = useApp();
  const { parts } = bench.shop.value;
  return (
    <section class="stack" aria-labelledby="review-given-title">
      <h2 id="review-given-title">{words.given}</h2>
      {book.quotations.length === 0 && <p>{words.none}</p>}
      <ul class="review-list">
        {[...book.quotations].reverse().map((quotation) => {
          const { key, at, quantity, partCode, totalMs, lowMs, highMs, due, note, by, part } = quotation;
          const isOld = isOverhauled(
            quotation,
            parts.find(({ id }) => id === part),
          );
          return (
            <li key={key}>
              {words.line(formatDay(localDay(at)), formatNumber(quantity), partCode, hours(totalMs))}
              {lowMs !== null && highMs !== null && ` ${words.range(hours(lowMs), hours(highMs))}`}
              {due && `, ${words.dueLine(formatDay(due.finish), formatDay(due.latest ?? due.finish))}`}
              {[note, by].filter(Boolean).map((text) => `, ${text}`)}
              <small class="quiet"> {isOld ? words.overhauled : words.stands}</small>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

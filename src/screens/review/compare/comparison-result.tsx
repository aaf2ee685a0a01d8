import { DifferenceChart } from '../../../charts/difference-chart';
import { localDay } from '../../../domain/day/local-day';
import { type BeforeAfter, beforeAfter } from '../../../domain/weeks/before-after';
import { isFixedBeforehand } from '../../../domain/weeks/fixed-beforehand';
import type { ReviewBook } from '../../../domain/weeks/review-book';
import { decimalMinutes } from '../../../i18n/decimal-time';
import { beforeAfterWords as words } from '../../../i18n/en/before-after';
import { review } from '../../../i18n/en/review';
import { formatDay } from '../../../i18n/format-day';
import { formatNumber } from '../../../i18n/format-number';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';
import { useWidth } from '../use-width';
import { BesideTime } from './beside-time';
import { useDaysBetween } from './use-days-between';

type Terms = ReviewBook['comparisons'][number];

const FEW_DAYS = 5;
const MINUTE_MS = 60_000;

/** What came of a comparison: the verdict in one sentence, how much, how sure, and what stands beside the time. */
export function ComparisonResult({ terms, book }: { terms: Terms; book: ReviewBook }) {
  const before = useDaysBetween(terms.beforeFrom, terms.beforeTo);
  const after = useDaysBetween(terms.afterFrom, terms.afterTo);
  if (!before || !after) return null;
  const found = beforeAfter(before, after, terms);
  const fixed = words[isFixedBeforehand(terms) ? 'fixedBefore' : 'fixedAfter'](
    formatNumber(terms.thresholdPct, Number.isInteger(terms.thresholdPct) ? 0 : 1),
    typeof found === 'string' ? '–' : `${decimalMinutes(found.thresholdMs)} min`,
    formatDay(localDay(terms.at)),
    terms.by,
  );
  return (
    <section class="stack" aria-labelledby="review-verdict">
      <div class="stack review-head">
        <h1 id="review-verdict">
          {typeof found === 'string' ? terms.title : words.verdicts[found.verdict](terms.title)}
        </h1>
        {typeof found === 'string' ? <p>{words.cannot[found]}</p> : <InNumbers found={found} />}
        <p class="quiet">{fixed}</p>
        {terms.withdrawn && (
          <p>
            <strong>
              {terms.title}, {review.takeAway.wasBack(formatDay(localDay(terms.withdrawn.at)))}
            </strong>
          </p>
        )}
      </div>
      {typeof found !== 'string' && <Picture found={found} />}
      {typeof found !== 'string' && <Cautions found={found} terms={terms} book={book} />}
      <BesideTime terms={terms} before={before} after={after} />
    </section>
  );
}

function InNumbers({ found }: { found: BeforeAfter }) {
  const { beforeMs, afterMs, ratio, difference } = found;
  const minutes = (ms: number) => `${decimalMinutes(ms)} min`;
  return (
    <>
      <p>
        {words.size(
          roundedClockFace(afterMs),
          roundedClockFace(beforeMs),
          formatNumber(100 * Math.abs(1 - ratio.value)),
          ratio.value < 1 ? 'less' : 'more',
        )}{' '}
        {words.rate(
          formatNumber(1 / ratio.value, 2),
          formatNumber(1 / ratio.upper, 2),
          formatNumber(1 / ratio.lower, 2),
        )}
      </p>
      <p>{words.sure(minutes(difference.value), minutes(difference.lower), minutes(difference.upper))}</p>
    </>
  );
}

function Picture({ found }: { found: BeforeAfter }) {
  const { ref, width } = useWidth();
  const { difference, thresholdMs } = found;
  return (
    <figure class="review-picture" ref={ref}>
      {width > 0 && (
        <DifferenceChart
          id="review-difference"
          title={words.picture.title}
          description={words.sure(
            `${decimalMinutes(difference.value)} min`,
            `${decimalMinutes(difference.lower)} min`,
            `${decimalMinutes(difference.upper)} min`,
          )}
          width={width}
          difference={difference.value / MINUTE_MS}
          lower={difference.lower / MINUTE_MS}
          upper={difference.upper / MINUTE_MS}
          threshold={thresholdMs / MINUTE_MS}
          words={words.picture}
          tickText={(value) => formatNumber(value, 2)}
        />
      )}
    </figure>
  );
}

function Cautions({ found, terms, book }: { found: BeforeAfter; terms: Terms; book: ReviewBook }) {
  const { days, parts, compared, leftOut } = found;
  const isInside = (from: string, to: string) =>
    book.notes.some(({ day, isChange }) => isChange && day > from && day <= to);
  return (
    <div class="stack small review-head">
      <p>{words.basis(formatNumber(parts[0]), days[0], formatNumber(parts[1]), days[1])}</p>
      {compared.length > 1 && <p>{words.overMix(compared.join(', '))}</p>}
      {terms.part === null && leftOut.length > 0 && <p>{words.leftOut(leftOut.join(', '))}</p>}
      {Math.min(...days) < FEW_DAYS && <p>{words.fewDays}</p>}
      {(isInside(terms.beforeFrom, terms.beforeTo) || isInside(terms.afterFrom, terms.afterTo)) && (
        <p>{words.changeInside}</p>
      )}
    </div>
  );
}

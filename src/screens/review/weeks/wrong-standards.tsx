import type { DaySummary } from '../../../domain/day/summarise-day';
import { areStandardsTold, suspectStandards } from '../../../domain/weeks/suspect-standards';
import { reviewWeeks } from '../../../i18n/en/review-weeks';
import { formatNumber } from '../../../i18n/format-number';

const words = reviewWeeks.standards;

/** Targets that look wrong beside those of the other parts. */
export function WrongStandards({ days }: { days: readonly DaySummary[] }) {
  const suspects = suspectStandards(days);
  return (
    <section class="stack" aria-labelledby="review-standards-title">
      <h2 id="review-standards-title">{words.title}</h2>
      {suspects.length === 0 && <p>{areStandardsTold(days) ? words.none : words.cannotTell}</p>}
      {suspects.map(({ part, partCode, against, days: count }) => {
        const percent = formatNumber(100 * Math.abs(against - 1));
        return <p key={part}>{words[against > 1 ? 'more' : 'less'](partCode, percent, count)}</p>;
      })}
    </section>
  );
}

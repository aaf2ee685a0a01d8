import type { LeadTimes } from '../../../domain/cell/lead-times';
import { dayFigures } from '../../../domain/day/day-figures';
import { firstPassYield } from '../../../domain/day/first-pass-yield';
import type { DaySummary } from '../../../domain/day/summarise-day';
import type { ComparisonTerms } from '../../../domain/records/review-fact';
import { beforeAfterWords } from '../../../i18n/en/before-after';
import { formatNumber } from '../../../i18n/format-number';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';
import { useLeadTime } from './use-lead-time';

const words = beforeAfterWords.beside;

interface Props {
  readonly terms: Pick<ComparisonTerms, 'beforeFrom' | 'beforeTo' | 'afterFrom' | 'afterTo'>;
  readonly before: Days;
  readonly after: Days;
}

/** Quality and the other figures of both periods: time alone improves nothing. */
export function BesideTime({ terms, before, after }: Props) {
  const beforeTimes = useLeadTime(terms.beforeFrom, terms.beforeTo);
  const afterTimes = useLeadTime(terms.afterFrom, terms.afterTo);
  const lines = [
    { name: words.yield, of: yieldText },
    { name: words.scrap, of: scrapText },
    { name: words.perGood, of: perGoodText },
    { name: words.efficiency, of: efficiencyText },
  ];
  return (
    <section class="stack" aria-labelledby="review-beside-title">
      <h2 id="review-beside-title">{titleOf(before, after)}</h2>
      <table class="sheet review-sheet">
        <thead>
          <tr>
            <th scope="col" class="words">
              {words.what}
            </th>
            <th scope="col">{words.before}</th>
            <th scope="col">{words.after}</th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ name, of }) => (
            <tr key={name}>
              <th scope="row" class="words">
                {name}
              </th>
              <td>{of(before)}</td>
              <td>{of(after)}</td>
            </tr>
          ))}
          <tr>
            <th scope="row" class="words">
              {words.leadTime}
            </th>
            <td>{leadTimeText(beforeTimes)}</td>
            <td>{leadTimeText(afterTimes)}</td>
          </tr>
        </tbody>
      </table>
      <p class="small quiet">{words.note}</p>
    </section>
  );
}

type Days = readonly DaySummary[];

function sum(days: Days, of: (day: DaySummary) => number): number {
  return days.reduce((total, day) => total + of(day), 0);
}

function yieldOf(days: Days): ReturnType<typeof firstPassYield> {
  return firstPassYield(
    sum(days, ({ firstTime }) => firstTime),
    sum(days, ({ done }) => done),
  );
}

/** What became of the yield, and no more than its intervals say. */
function titleOf(before: Days, after: Days): string {
  const [old, now] = [yieldOf(before), yieldOf(after)];
  if (!old || !now) return words.title.unknown;
  const texts = [old, now].map(({ share }) => words.percent(formatNumber(100 * share, 1)));
  const [first, second] = texts as [string, string];
  if (now.lower > old.upper) return words.title.rose(first, second);
  return words.title[now.upper < old.lower ? 'fell' : 'alike'](first, second);
}

function yieldText(days: Days): string {
  const found = yieldOf(days);
  if (!found) return words.none;
  const percent = (share: number) => formatNumber(100 * share, 1);
  return words.between(percent(found.share), percent(found.lower), percent(found.upper));
}

function scrapText(days: Days): string {
  const done = sum(days, (day) => day.done);
  return done === 0
    ? words.none
    : words.percent(formatNumber((100 * sum(days, ({ scrap }) => scrap)) / done, 1));
}

function perGoodText(days: Days): string {
  const good = sum(days, (day) => day.good);
  return good === 0 ? words.none : roundedClockFace(sum(days, ({ attendedMs }) => attendedMs) / good);
}

/** Mean of the days; a day of which it cannot be told is left out. */
function efficiencyText(days: Days): string {
  const told = days.flatMap((day) => dayFigures(day).efficiency ?? []);
  if (told.length === 0) return words.none;
  return words.percent(formatNumber((100 * told.reduce((total, each) => total + each, 0)) / told.length, 1));
}

function leadTimeText(times: LeadTimes | null | undefined): string {
  if (times === undefined) return '…';
  if (!times) return words.noLots;
  return words.leadTimeValue(roundedClockFace(times.medianMs), roundedClockFace(times.p90Ms));
}

import { useState } from 'preact/hooks';
import { MixChart } from '../../../charts/mix-chart';
import { compareDays } from '../../../domain/day/compare-days';
import { dayFigures } from '../../../domain/day/day-figures';
import { dayGap } from '../../../domain/day/day-gap';
import type { DaySummary } from '../../../domain/day/summarise-day';
import { reviewDayMore } from '../../../i18n/en/review-day-more';
import { formatDay } from '../../../i18n/format-day';
import { formatNumber } from '../../../i18n/format-number';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';
import { Figure } from '../figure';
import { useWidth } from '../use-width';
import type { Working } from '../working';
import { demandedWorking, efficiencyWorking } from './day-workings';
import { fairSentence } from './fair-sentence';
import { GapTable } from './gap-table';
import { mostBesideMix } from './most-beside-mix';

const words = reviewDayMore.fair;
const MINUTE_MS = 60_000;

interface Props {
  readonly day: DaySummary;
  readonly days: readonly DaySummary[];
  readonly open: (working: Working) => void;
}

/** Slow, or hard? The day beside any other, by what its parts demanded and by what they took. */
export function DayFairness({ day, days, open }: Props) {
  const { ref, width } = useWidth();
  const [wanted, setWanted] = useState('');
  const others = days.filter((each) => each.day !== day.day && dayFigures(each).efficiency !== null);
  const before = others.find((each) => each.day < day.day) ?? others[0];
  const other = others.find((each) => each.day === wanted) ?? before;
  const isTold = dayFigures(day).efficiency !== null;
  const compared = other && compareDays(day, other);
  const gap = other ? (dayGap(day, other) ?? []) : [];
  return (
    <section class="stack" aria-labelledby="review-fair-title">
      <h2 id="review-fair-title">{words.title}</h2>
      {!isTold && <p>{words.noTarget}</p>}
      {isTold && !other && <p>{words.none}</p>}
      {compared && (
        <>
          <p>
            {fairSentence(compared, formatDay(other.day))}{' '}
            {compared.mixShare !== null && mostBesideMix(gap, [day, other])}
          </p>
          <figure class="review-picture" ref={ref}>
            {width > 0 && (
              <MixChart
                id="review-fair"
                title={words.pictureTitle}
                description={fairSentence(compared, formatDay(other.day))}
                width={width}
                bars={[day, other].map((each, place) => ({
                  label: formatDay(each.day),
                  mix: compared.mixMs[place]! / MINUTE_MS,
                  taken: compared.perGoodMs[place]! / MINUTE_MS,
                  mixText: words.demanded(roundedClockFace(compared.mixMs[place]!)),
                  takenText: words.took(roundedClockFace(compared.perGoodMs[place]!)),
                  efficiencyText: words.efficiency(formatNumber(100 * compared.efficiency[place]!, 1)),
                }))}
                axisText={words.axis}
                tickText={(minutes) => formatNumber(minutes, Number.isInteger(minutes) ? 0 : 1)}
              />
            )}
            <figcaption class="small quiet">{words.legend}</figcaption>
          </figure>
          <GapTable steps={gap} />
          <p class="row">
            <Figure open={open} working={() => demandedWorking(day)}>
              {words.demanded(roundedClockFace(compared.mixMs[0]))}
            </Figure>
            <Figure open={open} working={() => efficiencyWorking(day)}>
              {words.efficiency(formatNumber(100 * compared.efficiency[0], 1))}
            </Figure>
          </p>
          <label class="field review-beside no-print">
            <span>{words.with}</span>
            <select value={other.day} onChange={(event) => setWanted(event.currentTarget.value)}>
              {others.map((each) => (
                <option key={each.day} value={each.day}>
                  {formatDay(each.day)}
                </option>
              ))}
            </select>
          </label>
        </>
      )}
    </section>
  );
}

import { ratioElements } from '../../../domain/day/ratio-elements';
import { type StandardRatios, standardRatios } from '../../../domain/day/standard-ratios';
import type { DaySummary } from '../../../domain/day/summarise-day';
import { reviewDayMore } from '../../../i18n/en/review-day-more';
import { formatNumber } from '../../../i18n/format-number';

const words = reviewDayMore.ratios;
const HOUR_MS = 3_600_000;

/** Key figures under the names of the standard, each with its formula in words. */
export function RatioTable({ day }: { day: DaySummary }) {
  const elements = ratioElements(day);
  if (!elements) return <p>{words.none}</p>;
  const ratios = standardRatios(elements);
  return (
    <>
      <table class="sheet review-sheet">
        <thead>
          <tr>
            <th scope="col" class="words">
              {words.name}
            </th>
            <th scope="col" class="words">
              {words.formula}
            </th>
            <th scope="col">{words.value}</th>
          </tr>
        </thead>
        <tbody>
          {(Object.keys(ratios) as (keyof StandardRatios)[]).map((name) => (
            <tr key={name}>
              <th scope="row" class="words">
                {words.names[name]}
              </th>
              <td class="words">{words.formulas[name]}</td>
              <td>{valueText(name, ratios[name])}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="small quiet">{words.note}</p>
    </>
  );
}

function valueText(name: keyof StandardRatios, value: number | null): string {
  if (value === null) return '–';
  // Parts a millisecond say nothing to anybody.
  return name === 'throughputRate' ? formatNumber(value * HOUR_MS, 1) : `${formatNumber(100 * value, 1)} %`;
}

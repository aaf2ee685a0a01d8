import type { Study } from '../../domain/study/study';
import type { ElementSummary } from '../../domain/study/summarise-study';
import { study as allWords } from '../../i18n/en/study';
import { studySheet } from '../../i18n/en/study-sheet';
import type { TimeWords } from './time-words';

const words = studySheet.observation;

interface Props {
  readonly study: Study;
  readonly lines: readonly ElementSummary[];
  readonly time: TimeWords;
}

/** The foot of the sheet: the means with and without what was left out, side by side. */
export function ObservationSums({ study, lines, time }: Props) {
  const shown = (ms: number | null) => (ms === null ? allWords.none : time.figure(ms));
  return (
    <table class="sheet study-sums">
      <caption>{words.sums}</caption>
      <thead>
        <tr>
          <th scope="col">{words.element}</th>
          <th scope="col">
            {words.total}, {time.unit}
          </th>
          <th scope="col">{words.used}</th>
          <th scope="col">{words.mean}</th>
          <th scope="col">{words.meanOfAll}</th>
          <th scope="col">{words.meanNormal}</th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ element, elementNo, n, observedMeanMs, meanOfAllMs, normalMeanMs }) => (
          <tr key={element}>
            <td>
              {elementNo} {element}
            </td>
            <td>{time.figure(totalUsed(study, element))}</td>
            <td>{n}</td>
            <td>{shown(observedMeanMs)}</td>
            <td>{shown(meanOfAllMs)}</td>
            <td>{shown(normalMeanMs)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function totalUsed({ readings }: Study, element: string): number {
  return readings.reduce(
    (sum, { row }) => (row.element === element && row.excluded === null ? sum + (row.observedMs ?? 0) : sum),
    0,
  );
}

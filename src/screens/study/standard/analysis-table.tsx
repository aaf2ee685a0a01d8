import { isBesideStandard, isOtherMethod } from '../../../application/study/counts-by-itself';
import type { StudyOfPart } from '../../../application/study/read-studies-of-part';
import type { StandardRevision } from '../../../domain/shop/fold-standards';
import type { MethodRevision } from '../../../domain/shop/shop';
import type { StudiesAnalysis } from '../../../domain/study/analyse-studies';
import type { StudySummary } from '../../../domain/study/summarise-study';
import { study as allWords } from '../../../i18n/en/study';
import { studySheet } from '../../../i18n/en/study-sheet';
import { studyStandard as words } from '../../../i18n/en/study-standard';
import { formatNumber } from '../../../i18n/format-number';
import type { TimeWords } from '../time-words';
import { toldApart } from './told-apart';

const HOUR_MS = 3_600_000;

interface Props {
  readonly studies: readonly StudyOfPart[];
  readonly counts: (study: StudyOfPart) => boolean;
  readonly method: MethodRevision | undefined;
  readonly issued: StandardRevision | undefined;
  readonly onToggle: (study: StudyOfPart) => void;
  readonly analysis: StudiesAnalysis | null;
  readonly chosen: readonly StudyOfPart[];
  readonly time: TimeWords;
}

/** Elements down, studies across: what differs between people and days is in sight before it is averaged. */
export function AnalysisTable(props: Props) {
  const { studies, counts, method, issued, onToggle, analysis, chosen, time } = props;
  return (
    <section class="stack" aria-labelledby="study-analysis">
      <h2 id="study-analysis">{words.studies}</h2>
      <ul class="study-taken no-print">
        {studies.map((one) => (
          <li key={one.id}>
            <label class="study-told">
              <input type="checkbox" checked={counts(one)} onChange={() => onToggle(one)} />
              <span>
                {one.operator} {one.day}
                <span class="small quiet"> {remarks(one, method, issued)}</span>
              </span>
            </label>
          </li>
        ))}
      </ul>
      {analysis && <Figures analysis={analysis} chosen={chosen} time={time} />}
    </section>
  );
}

/** Its name, and everything for which it is not ticked by itself. */
function remarks(study: StudyOfPart, method: Props['method'], issued: Props['issued']): string {
  const { title, obstacles, methodRevision } = study;
  const said: string[] = obstacles.map((obstacle) => words.obstacles[obstacle]);
  if (isOtherMethod(study, method)) said.push(words.otherRevision(methodRevision!, method!.revision));
  if (isBesideStandard(study, issued)) said.push(words.beside(issued!.revision));
  return [title, ...said].join('; ');
}

function Figures({ analysis, chosen, time }: Pick<Props, 'chosen' | 'time'> & { analysis: StudiesAnalysis }) {
  const { together, each } = analysis;
  const lines = together.elements.filter(({ elementClass }) => elementClass !== 'foreign');
  const shown = (ms: number | null | undefined) => written(ms, time.figure);
  const of = (summary: StudySummary, element: string) =>
    summary.elements.find((line) => line.element === element);
  const total = (
    name: string,
    value: (summary: StudySummary) => number | null,
    write: (value: number) => string = time.figure,
  ) => (
    <tr>
      <th scope="row">{name}</th>
      {each.map((summary, place) => (
        <td key={chosen[place]!.id}>{written(value(summary), write)}</td>
      ))}
      <td>{written(value(together), write)}</td>
    </tr>
  );
  return (
    <div class="study-wide">
      <table class="sheet study-analysis">
        <caption>{words.perUnit(time.unit)}</caption>
        <thead>
          <tr>
            <th scope="col">{words.element}</th>
            {chosen.map((one) => (
              <th key={one.id} scope="col">
                {one.operator}
                <br />
                <span class="quiet">{toldApart(one, chosen)}</span>
              </th>
            ))}
            <th scope="col">{words.together}</th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ element, elementNo, normalPerUnitMs, n }) => (
            <tr key={element}>
              <th scope="row">
                {elementNo} {element}
              </th>
              {each.map((summary, place) => {
                const line = of(summary, element);
                return (
                  <td key={chosen[place]!.id}>
                    {shown(line?.normalPerUnitMs)} <span class="quiet small">{line?.n ?? 0}</span>
                  </td>
                );
              })}
              <td>
                <strong>{shown(normalPerUnitMs)}</strong> <span class="quiet small">{n}</span>
              </td>
            </tr>
          ))}
          {total(words.normal, ({ normalTimeMs }) => normalTimeMs)}
          {total(words.standard, ({ standardTimeMs }) => standardTimeMs)}
          {total(
            studySheet.totals.pieces,
            ({ piecesPerHour }) => piecesPerHour,
            (pieces) => formatNumber(pieces, 1),
          )}
          {total(
            studySheet.totals.hours,
            ({ standardTimeMs }) => standardTimeMs,
            (ms) => formatNumber((ms * 100) / HOUR_MS, 3),
          )}
        </tbody>
      </table>
    </div>
  );
}

function written(value: number | null | undefined, write: (value: number) => string): string {
  return value == null ? allWords.none : write(value);
}

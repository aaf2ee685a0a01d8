import type { LogRecord } from '../../domain/records/log-record';
import type { Study } from '../../domain/study/study';
import type { StudyRow } from '../../domain/study/study-row';
import type { StudySummary } from '../../domain/study/summarise-study';
import { studySheet } from '../../i18n/en/study-sheet';
import type { OpenFigure } from './figure';
import type { RequiredForm } from './needed-working';
import { SummaryLine } from './summary-line';
import type { TimeWords } from './time-words';

const words = studySheet.columns;

interface Props {
  readonly rows: readonly StudyRow[];
  readonly summary: StudySummary;
  readonly breakPoints: ReadonlyMap<string, string>;
  readonly time: TimeWords;
  readonly form: RequiredForm;
  readonly open: OpenFigure;
  readonly onForm: (form: RequiredForm) => void;
  readonly study: Study;
  readonly onRecord: (records: readonly LogRecord[]) => void;
}

/** One line an element of the job. */
export function SummaryTable({
  rows,
  summary,
  breakPoints,
  time,
  form,
  open,
  onForm,
  study,
  onRecord,
}: Props) {
  const lines = summary.elements.filter(({ elementClass }) => elementClass !== 'foreign');
  const withUnit = (column: string) => (
    <>
      {column}
      <br />
      <span class="quiet">{time.unit}</span>
    </>
  );
  return (
    <table class="sheet study-summary">
      <thead>
        <tr>
          <th scope="col">{words.number}</th>
          <th scope="col" class="words">
            {words.element}
          </th>
          <th scope="col">{words.n}</th>
          <th scope="col">{withUnit(words.observed)}</th>
          <th scope="col">{words.rating}</th>
          <th scope="col">{withUnit(words.normal)}</th>
          <th scope="col">{words.frequency}</th>
          <th scope="col">{withUnit(words.perUnit)}</th>
          <th scope="col">{words.precision}</th>
          <th scope="col">{words.needed}</th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <SummaryLine
            key={line.element}
            evidence={{
              summary: line,
              rows: rows.filter(({ element }) => element === line.element),
              time,
              form,
            }}
            breakPoint={breakPoints.get(line.element) ?? ''}
            open={open}
            onForm={onForm}
            study={study}
            onRecord={onRecord}
          />
        ))}
      </tbody>
    </table>
  );
}

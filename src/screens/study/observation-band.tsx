import { Fragment } from 'preact';
import type { LogRecord } from '../../domain/records/log-record';
import type { ForeignLetter } from '../../domain/study/foreign-letters';
import type { Study } from '../../domain/study/study';
import type { ElementSummary } from '../../domain/study/summarise-study';
import { studySheet } from '../../i18n/en/study-sheet';
import { ReadingCell } from './reading-cell';
import { ReadingEditor } from './reading-editor';
import type { TimeWords } from './time-words';

const words = studySheet.observation;

interface Props {
  readonly study: Study;
  readonly lines: readonly ElementSummary[];
  readonly cycles: readonly number[];
  /** Columns for cycles, filled or not, so that bands stand in line. */
  readonly width: number;
  readonly letters: readonly ForeignLetter[];
  /** Readings worth a look. */
  readonly flagged: ReadonlySet<string>;
  readonly time: TimeWords;
  readonly openReading: string | null;
  readonly onToggle: (id: string) => void;
  readonly onRecord: (records: readonly LogRecord[]) => void;
}

export function ObservationBand(props: Props) {
  const { study, lines, cycles, width, letters, flagged, time, openReading, onToggle, onRecord } = props;
  const blanks = Array.from({ length: width - cycles.length }, (_, index) => index);
  const name = words.cycles(cycles[0] ?? 0, cycles.at(-1) ?? 0);
  return (
    <table class="sheet study-observation">
      <caption class="visually-hidden">{name}</caption>
      <thead>
        <tr>
          <th scope="col">{words.element}</th>
          {cycles.map((cycle) => (
            <th key={cycle} scope="col">
              {cycle}
            </th>
          ))}
          {blanks.map((blank) => (
            <td key={blank} class="study-blank" />
          ))}
        </tr>
      </thead>
      <tbody>{lines.map(line)}</tbody>
    </table>
  );

  function line({ element, elementNo }: ElementSummary) {
    const own = study.readings.filter(({ row }) => row.element === element);
    const open = own.find(({ id, row }) => id === openReading && cycles.includes(row.cycle));
    return (
      <Fragment key={element}>
        <tr>
          <th scope="row">
            {elementNo} {element}
          </th>
          {cycles.map((cycle) => (
            <td key={cycle}>
              {own
                .filter(({ row }) => row.cycle === cycle)
                .map((reading) => (
                  <ReadingCell
                    key={reading.id}
                    reading={reading}
                    letters={letters
                      .filter(({ inside }) => inside === reading.id)
                      .map(({ letter }) => letter)}
                    isFlagged={flagged.has(reading.id)}
                    time={time}
                    isOpen={reading.id === openReading}
                    onToggle={() => onToggle(reading.id)}
                  />
                ))}
            </td>
          ))}
          {blanks.map((blank) => (
            <td key={blank} class="study-blank" />
          ))}
        </tr>
        {open && (
          <tr>
            <td class="words" colSpan={width + 1}>
              <ReadingEditor
                key={open.id}
                study={study}
                reading={open}
                time={time}
                onRecord={onRecord}
                onClose={() => onToggle(open.id)}
              />
            </td>
          </tr>
        )}
      </Fragment>
    );
  }
}

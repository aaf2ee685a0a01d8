import { Fragment } from 'preact';
import type { LogRecord } from '../../domain/records/log-record';
import type { ForeignLetter } from '../../domain/study/foreign-letters';
import type { Reading, Study } from '../../domain/study/study';
import { study as allWords } from '../../i18n/en/study';
import { studySheet } from '../../i18n/en/study-sheet';
import { elementWords } from './element-words';
import { ReadingEditor } from './reading-editor';
import type { TimeWords } from './time-words';

const words = studySheet.observation;

interface Props {
  readonly study: Study;
  readonly letters: readonly ForeignLetter[];
  readonly time: TimeWords;
  readonly openReading: string | null;
  readonly onToggle: (id: string) => void;
  readonly onRecord: (records: readonly LogRecord[]) => void;
}

/** What the capital letters on the sheet stand for. */
export function ForeignList({ study, letters, time, openReading, onToggle, onRecord }: Props) {
  if (letters.length === 0) return null;
  const total = letters.reduce((sum, { reading }) => sum + (reading.row.observedMs ?? 0), 0);
  return (
    <table class="sheet study-foreign">
      <caption>{words.foreignTitle}</caption>
      <thead>
        <tr>
          <th scope="col">{words.foreign}</th>
          <th scope="col" class="words">
            {words.foreignWhat}
          </th>
          <th scope="col">{words.foreignCycle}</th>
          <th scope="col" class="words">
            {words.foreignInside}
          </th>
          <th scope="col">
            {words.foreignTime}, {time.unit}
          </th>
        </tr>
      </thead>
      <tbody>{letters.map(({ letter, reading, inside }) => line(letter, reading, inside))}</tbody>
      <tfoot>
        <tr>
          <td colSpan={4}>{words.foreignTotal}</td>
          <td>{time.figure(total)}</td>
        </tr>
      </tfoot>
    </table>
  );

  function line(letter: string, reading: Reading, inside: string | null) {
    const { id, row } = reading;
    return (
      <Fragment key={id}>
        <tr>
          <td>{letter}</td>
          <td class="words">
            <button
              type="button"
              class="study-foreign-name"
              aria-label={words.foreignOpen(elementWords(row))}
              onClick={() => onToggle(id)}
            >
              {elementWords(row)}
            </button>
          </td>
          <td>{row.cycle}</td>
          <td class="words">
            {study.readings.find((other) => other.id === inside)?.row.element ?? words.unknownPlace}
          </td>
          <td>{row.observedMs === null ? allWords.none : time.figure(row.observedMs)}</td>
        </tr>
        {id === openReading && (
          <tr>
            <td class="words" colSpan={5}>
              <ReadingEditor
                study={study}
                reading={reading}
                time={time}
                onRecord={onRecord}
                onClose={() => onToggle(id)}
              />
            </td>
          </tr>
        )}
      </Fragment>
    );
  }
}

import type { ForeignLetter } from '../../domain/study/foreign-letters';
import type { Reading } from '../../domain/study/study';
import { study as allWords } from '../../i18n/en/study';
import { studySheet } from '../../i18n/en/study-sheet';
import type { TimeWords } from './time-words';

const words = studySheet.observation;

interface Props {
  readonly letters: readonly ForeignLetter[];
  readonly readings: readonly Reading[];
  readonly time: TimeWords;
}

/** What the capital letters on the sheet stand for. */
export function ForeignList({ letters, readings, time }: Props) {
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
      <tbody>
        {letters.map(({ letter, reading: { id, row }, inside }) => (
          <tr key={id}>
            <td>{letter}</td>
            <td class="words">{row.element}</td>
            <td>{row.cycle}</td>
            <td class="words">
              {readings.find((reading) => reading.id === inside)?.row.element ?? words.unknownPlace}
            </td>
            <td>{row.observedMs === null ? allWords.none : time.figure(row.observedMs)}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <td colSpan={4}>{words.foreignTotal}</td>
          <td>{time.figure(total)}</td>
        </tr>
      </tfoot>
    </table>
  );
}

import type { DayNote } from '../domain/weeks/review-book';
import { day, NOT_FOR_PAY, type TypedTable, text, whole } from './typed-table';

const columns = [day('day'), text('note'), whole('work_changed'), NOT_FOR_PAY];

/** What was noted on days, oldest day first. Who wrote it does not leave the tablet here. */
export function notesTable(notes: readonly DayNote[]): TypedTable {
  return {
    name: 'notes',
    columns,
    rows: [...notes]
      .sort((a, b) => (a.day < b.day ? -1 : 1))
      .map(({ day: of, text: note, isChange }) => [of, note, isChange ? 1 : 0]),
  };
}

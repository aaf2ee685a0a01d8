import type { Bench } from '../../application/bench';
import { readAttendedTurns } from '../../application/review/read-attended-turns';
import { readReviewBook } from '../../application/review/read-review-book';
import { readTurnsBetween } from '../../application/review/read-turns-between';
import { hourBoard } from '../../domain/day/hour-board';
import type { DaySummary } from '../../domain/day/summarise-day';
import { setUpStandardAt } from '../../domain/weeks/review-book';
import { dayPartsTable } from '../../exchange/day-parts-table';
import { hoursTable } from '../../exchange/hours-table';
import { lostTimeTable } from '../../exchange/lost-time-table';
import { notesTable } from '../../exchange/notes-table';
import { turnsTable } from '../../exchange/turns-table';
import type { TypedTable } from '../../exchange/typed-table';
import { weeksTable } from '../../exchange/weeks-table';
import { reasonName } from './reason-name';

/**
 * All tables of a span of days, for one spreadsheet: what Review shows, sheet by sheet.
 *
 * @param days oldest first
 * @param ofWeeks the days of the weeks that they lie in
 */
export async function workbook(
  bench: Bench,
  days: readonly DaySummary[],
  ofWeeks: readonly DaySummary[],
): Promise<TypedTable[]> {
  const [from, to] = [days[0]?.day ?? '', days.at(-1)?.day ?? ''];
  const book = await readReviewBook(bench);
  const boards = [];
  for (const { day } of days) {
    const turns = await readAttendedTurns(bench, day);
    const began = turns[0]?.turn.startedAt.wallMs ?? 0;
    boards.push({ day, hours: hourBoard(turns, setUpStandardAt(book, began)) });
  }
  return [
    dayPartsTable(days),
    weeksTable(ofWeeks),
    turnsTable(await readTurnsBetween(bench, { from, to })),
    lostTimeTable(days, reasonName),
    hoursTable(boards, reasonName),
    notesTable(book.notes.filter(({ day }) => day >= from && day <= to)),
  ];
}

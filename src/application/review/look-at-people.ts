import { groupBy } from '../../domain/group-by';
import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Cycle } from '../../domain/turn/turn';
import { type PersonDay, type PersonFigure, personFigures } from '../../domain/weeks/person-figures';
import type { Bench } from '../bench';
import { dayOf } from './day-of';
import type { DaySpan } from './read-summaries';
import { readTurnStarts } from './read-turn-starts';
import { readTurnToSummarise } from './read-turn-to-summarise';
import { writtenText } from './written-text';

const DAY_MS = 86_400_000;

/**
 * Figures of single persons, with the purpose on record before anything is shown: whoever they are about can see
 * who looked, when, and why.
 *
 * @throws {RangeError} lookAtPeople requires a purpose
 * @throws {RangeError} lookAtPeople requires who looks
 */
export async function lookAtPeople(
  bench: Bench,
  { from, to }: DaySpan,
  { purpose, by }: { purpose: string; by: string },
): Promise<PersonFigure[]> {
  const fact = {
    kind: 'people-looked-at',
    purpose: writtenText('lookAtPeople', 'a purpose', purpose),
    by: writtenText('lookAtPeople', 'who looks', by),
    fromDay: from,
    toDay: to,
  } as const;
  bench.record(SHOP_STREAM, [fact]);
  const starts = await readTurnStarts(bench, {
    fromWallMs: Date.parse(from) - DAY_MS,
    toWallMs: Date.parse(to) + 2 * DAY_MS,
  });
  const days: PersonDay[] = [];
  // One after the other: nobody waits for a page that holds a year of turns at once.
  for (const { id, stamp } of starts) {
    const day = dayOf(bench, stamp);
    if (day < from || day > to) continue;
    const { turn } = await readTurnToSummarise(bench, id);
    days.push(...personDays(day, turn.cycles));
  }
  return personFigures(days);
}

/** A part that two persons made is in neither one's figure. */
function personDays(day: string, cycles: readonly Cycle[]): PersonDay[] {
  const own = cycles.filter(
    ({ isCounted, isShared, targetMs }) => isCounted && !isShared && targetMs !== null && targetMs > 0,
  );
  return [...groupBy(own, ({ person }) => person)].map(([person, those]) => ({
    person,
    day,
    parts: those.length,
    takenMs: those.reduce((sum, { netMs }) => sum + netMs, 0),
    allowedMs: those.reduce((sum, { targetMs }) => sum + targetMs!, 0),
  }));
}

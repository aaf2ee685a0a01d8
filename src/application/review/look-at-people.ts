import { groupBy } from '../../domain/group-by';
import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Cycle } from '../../domain/turn/turn';
import { lastChange } from '../../domain/weeks/last-change';
import { type PersonDay, type PersonFigure, personFigures } from '../../domain/weeks/person-figures';
import type { Bench } from '../bench';
import { dayOf } from './day-of';
import { readReviewBook } from './read-review-book';
import type { DaySpan } from './read-summaries';
import { readTurnStarts } from './read-turn-starts';
import { readTurnToSummarise } from './read-turn-to-summarise';
import { writtenText } from './written-text';

const DAY_MS = 86_400_000;

/** Figures of single persons, and the days they are from. */
export interface LookAtPeople extends DaySpan {
  /** Whether earlier days were left out, because the work was another then. */
  readonly isCut: boolean;
  readonly figures: readonly PersonFigure[];
}

/**
 * Figures of single persons, with the purpose on record before anything is shown: whoever they are about can see
 * who looked, when, and why.
 *
 * Only days since the work was last changed: who was at the station in more of the weeks before would look slow or quick by the
 * method alone. For the same reason a part counts from the newest revision of its method on.
 *
 * @throws {RangeError} lookAtPeople requires a purpose
 * @throws {RangeError} lookAtPeople requires who looks
 */
export async function lookAtPeople(
  bench: Bench,
  span: DaySpan,
  { purpose, by }: { purpose: string; by: string },
): Promise<LookAtPeople> {
  const written = {
    kind: 'people-looked-at',
    purpose: writtenText('lookAtPeople', 'a purpose', purpose),
    by: writtenText('lookAtPeople', 'who looks', by),
  } as const;
  const { to } = span;
  const changed = lastChange((await readReviewBook(bench)).notes, to) ?? '';
  const isCut = changed > span.from;
  const from = isCut ? changed : span.from;
  bench.record(SHOP_STREAM, [{ ...written, fromDay: from, toDay: to }]);
  const starts = await readTurnStarts(bench, {
    fromWallMs: Date.parse(from) - DAY_MS,
    toWallMs: Date.parse(to) + 2 * DAY_MS,
  });
  const revisedOn = new Map(
    bench.shop
      .peek()
      .parts.map(({ id, methods }) => [
        id,
        methods.findLast(({ revision, writtenOn }) => revision > 1 && writtenOn <= to)?.writtenOn ?? '',
      ]),
  );
  const days: PersonDay[] = [];
  // One after the other: nobody waits for a page that holds a year of turns at once.
  for (const { id, stamp } of starts) {
    const day = dayOf(bench, stamp);
    if (day < from || day > to) continue;
    const { turn } = await readTurnToSummarise(bench, id);
    days.push(
      ...personDays(
        day,
        turn.cycles.filter(({ part }) => day >= (revisedOn.get(part) ?? '')),
      ),
    );
  }
  return { from, to, isCut, figures: personFigures(days) };
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

import { type DaySummary, summariseDay } from '../../domain/day/summarise-day';
import { groupBy } from '../../domain/group-by';
import { type ReviewBook, setUpStandardAt } from '../../domain/weeks/review-book';
import type { Bench } from '../bench';
import type { KeptDay, SummaryMark, SummaryShelf } from '../ports/summary-shelf';
import { dayOf } from './day-of';
import { readReviewBook } from './read-review-book';
import { readTurnStarts, type TurnStart } from './read-turn-starts';
import { readTurnToSummarise } from './read-turn-to-summarise';

const DAY_MS = 86_400_000;
/** A local day reaches up to 14 hours either way from that of UTC: a whole day more is read, then filtered. */
const MARGIN_MS = DAY_MS;
/** More new records than this are dearer to go through than to make the summaries again. */
const MOST_NEW = 20_000;
/** Days made at a time, so that what was made is kept when the page goes. */
const AT_A_TIME = 10;

export interface DaySpan {
  readonly from: string;
  readonly to: string;
}

export interface Summaries {
  readonly book: ReviewBook;
  /** Oldest first. */
  readonly days: readonly DaySummary[];
}

/**
 * The summaries of the days from and to, both included. What is kept is taken, as long as no record came to it
 * since, no turn, and no other terms; the rest is made from the log and kept. So the answer is the same as if
 * nothing had been kept.
 *
 * @param told is called with the days that are done and all that are to be made, now and then
 */
export function readSummaries(
  bench: Bench,
  shelf: SummaryShelf,
  span: DaySpan,
  told: (done: number, of: number) => void = () => {},
): Promise<Summaries> {
  // One after the other: a slow one would keep what a later one knows to be untrue.
  const before = reading.get(shelf) ?? Promise.resolve();
  const now = before.then(() => readNext(bench, shelf, span, told));
  reading.set(
    shelf,
    now.catch(() => {}),
  );
  return now;
}

const reading = new WeakMap<SummaryShelf, Promise<unknown>>();

async function readNext(
  bench: Bench,
  shelf: SummaryShelf,
  span: DaySpan,
  told: (done: number, of: number) => void,
): Promise<Summaries> {
  const book = await readReviewBook(bench);
  // A shelf that fails costs time: everything is made from the log.
  const isCurrent = await bringUpToDate(bench, shelf, termsOf(bench, book)).then(
    () => true,
    () => false,
  );
  const [starts, kept] = await Promise.all([
    startsOfDays(bench, span),
    isCurrent ? shelf.readDays(span.from, span.to).catch(() => []) : [],
  ]);
  const known = new Map(kept.map((each) => [each.day, each]));
  const inHand = bench.turn.peek();
  const made: DaySummary[] = [];
  const missing = [...starts].filter(([day, turns]) => !isSame(known.get(day), turns));
  for (let from = 0; from < missing.length; from += AT_A_TIME) {
    const now = await Promise.all(
      missing.slice(from, from + AT_A_TIME).map(([day, turns]) => makeDay(bench, book, day, turns)),
    );
    made.push(...now.map(({ summary }) => summary));
    // What is still being tapped is not worth keeping.
    const lasting = now.filter(({ turns }) => !turns.some((id) => id === inHand?.id));
    await shelf.keep(lasting).catch(() => {});
    told(Math.min(from + AT_A_TIME, missing.length), missing.length);
  }
  const making = new Map(made.map((summary) => [summary.day, summary]));
  const days = [...starts.keys()].sort().map((day) => making.get(day) ?? known.get(day)!.summary);
  return { book, days };
}

/** Everything that a summary rests on beside the records of its turns. */
function termsOf(bench: Bench, { setUpStandards }: ReviewBook): string {
  const standards = setUpStandards.map(({ at, standardMs }) => [at.wallMs, standardMs]);
  return JSON.stringify([bench.log.device, bench.shop.peek().calendars, standards]);
}

/** Drops what the newest records of this tablet have made untrue. */
async function bringUpToDate(bench: Bench, shelf: SummaryShelf, terms: string): Promise<void> {
  const last = (await bench.log.lastRecord())?.sequence ?? 0;
  const now: SummaryMark = { sequence: last, terms };
  const mark = await shelf.readMark();
  const isKnown = mark !== null && mark.terms === terms && mark.sequence <= last;
  if (!isKnown || last - mark.sequence > MOST_NEW) {
    await shelf.clear(now);
  } else if (mark.sequence < last) {
    const newest = await bench.log.readNewest(last - mark.sequence);
    await shelf.dropTurns([...new Set(newest.map(({ stream }) => stream))], now);
  }
}

async function startsOfDays(bench: Bench, { from, to }: DaySpan): Promise<Map<string, TurnStart[]>> {
  const range = {
    fromWallMs: Date.parse(from) - MARGIN_MS,
    toWallMs: Date.parse(to) + DAY_MS + MARGIN_MS,
  };
  const starts = await readTurnStarts(bench, range);
  const byDay = groupBy(starts, ({ stamp }) => dayOf(bench, stamp));
  return new Map([...byDay].filter(([day]) => day >= from && day <= to));
}

function isSame(kept: KeptDay | undefined, turns: readonly TurnStart[]): boolean {
  return kept?.turns.length === turns.length && turns.every(({ id }, place) => id === kept.turns[place]);
}

async function makeDay(
  bench: Bench,
  book: ReviewBook,
  day: string,
  starts: readonly TurnStart[],
): Promise<KeptDay> {
  const turns = await Promise.all(starts.map(({ id }) => readTurnToSummarise(bench, id)));
  const standardMs = setUpStandardAt(book, starts[0]!.stamp.wallMs);
  return { day, turns: starts.map(({ id }) => id), summary: summariseDay(day, turns, standardMs) };
}

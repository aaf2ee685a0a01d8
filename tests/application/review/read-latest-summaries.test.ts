import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { readLatestSummaries } from '../../../src/application/review/read-latest-summaries';
import { readTurnsOfDay } from '../../../src/application/review/read-turns-of-day';
import { markPartDone } from '../../../src/application/turn/mark-part-done';
import { startTurn } from '../../../src/application/turn/start-turn';
import { localDay } from '../../../src/domain/day/local-day';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { IndexedDbRecordLog } from '../../../src/storage/indexeddb-record-log';
import { InMemorySummaryShelf } from '../../../src/storage/summaries/in-memory-summary-shelf';
import { FakeClock } from '../../support/fake-clock';
import { recordAt, stampAt } from '../../support/records';

const DAY_S = 86_400;

/** A log with one turn of one part at 07:00 on each of these days after Monday 2 March 2026. */
async function logOf(days: readonly number[]): Promise<InMemoryRecordLog> {
  const log = new InMemoryRecordLog('t');
  const inHand = { part: 'p', partCode: 'M', targetMs: 90_000 };
  for (const [place, day] of days.entries()) {
    const sequence = 2 * place + 1;
    const at = (seconds: number) => ({ device: 'old', stamp: stampAt((day * DAY_S + seconds) * 1_000) });
    const stream = `old:${sequence}`;
    await log.append([
      recordAt(sequence, 0, stream, { kind: 'turn-started', starts: 'turn', person: 'K7', ...inHand }, at(0)),
      recordAt(sequence + 1, 0, stream, { kind: 'turn-ended' }, at(80)),
    ]);
  }
  return log;
}

const daysOf = ({ days }: { days: readonly { day: string }[] }) => days.map(({ day }) => day);

const latestOf = (bench: Bench, weeks: number) =>
  readLatestSummaries(bench, new InMemorySummaryShelf(), weeks);

describe('the latest summaries', () => {
  it('are those of the newest day’s week and four whole weeks before it, newest first, and it is said that there are older ones', async () => {
    // Day 55 is a Sunday, its week begins at day 49, and the four before it at day 21, a Monday.
    const bench = await Bench.open(await logOf([0, 1, 20, 21, 30, 55]), new FakeClock());
    const latest = await latestOf(bench, 4);
    expect(daysOf(latest)).toEqual(['2026-04-26', '2026-04-01', '2026-03-23']);
    expect(latest.hasOlder).toBe(true);
    const longer = await latestOf(bench, 8);
    expect(daysOf(longer).slice(3)).toEqual(['2026-03-22', '2026-03-03', '2026-03-02']);
    expect(longer.hasOlder).toBe(false);
  });

  it('lose no day of their oldest week when one more day is worked', async () => {
    // Four weeks of five days from Monday on, and then the Monday after them.
    const fourWeeks = Array.from({ length: 20 }, (_, place) => 7 * Math.floor(place / 5) + (place % 5));
    const bench = await Bench.open(await logOf([...fourWeeks, 28]), new FakeClock());
    const latest = await latestOf(bench, 4);
    expect([latest.days.length, daysOf(latest).at(-1), latest.hasOlder]).toEqual([21, '2026-03-02', false]);
  });

  it('are counted back from the newest day, however long ago that was', async () => {
    const bench = await Bench.open(await logOf([0, 200]), new FakeClock());
    expect(daysOf(await latestOf(bench, 4))).toEqual(['2026-09-18']);
  });

  it('are none for an empty log', async () => {
    // On a database, where a span that ends before it begins is an error.
    const log = await IndexedDbRecordLog.open('empty', () => 't');
    const bench = await Bench.open(log, new FakeClock());
    expect(await latestOf(bench, 4)).toMatchObject({ days: [], hasOlder: false });
  });

  it('show the turn in hand although the log has refused it', async () => {
    class FullLog extends InMemoryRecordLog {
      override async append(): Promise<void> {
        throw new Error('full');
      }
    }
    const clock = new FakeClock();
    const bench = await Bench.open(new FullLog('t'), clock);
    startTurn(bench, 'K7', { part: 'p', partCode: 'M', targetMs: null });
    clock.pass(80_000);
    markPartDone(bench, clock.now());
    const { days } = await latestOf(bench, 4);
    expect(days).toMatchObject([{ day: '2026-03-02', done: 1, openTurns: 1 }]);
  });
});

describe('the turns of a day', () => {
  it('are found by its name, and a day without turns is like a text that is no day: there are none', async () => {
    const bench = await Bench.open(await logOf([0, 1]), new FakeClock());
    const startedOn = async (day: string) =>
      (await readTurnsOfDay(bench, day)).map(({ turn }) => localDay(turn.startedAt));
    expect(await startedOn('2026-03-03')).toEqual(['2026-03-03']);
    expect(await startedOn('2026-03-02')).toEqual(['2026-03-02']);
    for (const day of ['2026-03-05', 'yesterday', '2026-99-99']) expect(await startedOn(day)).toEqual([]);
  });
});

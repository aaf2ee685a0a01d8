import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { absorbStoppage } from '../../../src/application/review/absorb-stoppage';
import { fixComparison } from '../../../src/application/review/fix-comparison';
import { lookAtPeople } from '../../../src/application/review/look-at-people';
import { makeQuotation } from '../../../src/application/review/make-quotation';
import { noteDay } from '../../../src/application/review/note-day';
import { readLatestSummaries } from '../../../src/application/review/read-latest-summaries';
import { readLeadTime } from '../../../src/application/review/read-lead-time';
import { readReviewBook } from '../../../src/application/review/read-review-book';
import { removeDayNote } from '../../../src/application/review/remove-day-note';
import { removeOldTiming } from '../../../src/application/review/remove-old-timing';
import { setSetUpStandard } from '../../../src/application/review/set-set-up-standard';
import { timeOldMethod } from '../../../src/application/review/time-old-method';
import { withdrawComparison } from '../../../src/application/review/withdraw-comparison';
import { markPartDone } from '../../../src/application/turn/mark-part-done';
import { resumeWork } from '../../../src/application/turn/resume-work';
import { startTurn } from '../../../src/application/turn/start-turn';
import { stopWork } from '../../../src/application/turn/stop-work';
import { SHOP_STREAM } from '../../../src/domain/records/log-record';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { InMemorySummaryShelf } from '../../../src/storage/summaries/in-memory-summary-shelf';
import { records as demo, minutes } from '../../demo/demo-shop';
import { FakeClock } from '../../support/fake-clock';

async function emptyBench() {
  const log = new InMemoryRecordLog('t');
  const clock = new FakeClock();
  return { log, clock, bench: await Bench.open(log, clock) };
}

async function demoBench(clock = new FakeClock()) {
  const log = new InMemoryRecordLog('demo');
  await log.append(demo);
  return Bench.open(log, clock);
}

const terms = {
  title: 'One by one',
  part: null,
  beforeFrom: '2026-03-02',
  beforeTo: '2026-03-06',
  afterFrom: '2026-03-16',
  afterTo: '2026-03-27',
  thresholdPct: 10,
  by: ' FM ',
};

describe('what the foreman writes', () => {
  it('stands in the book, trimmed, with who wrote it', async () => {
    const { bench } = await emptyBench();
    noteDay(bench, { day: '2026-03-02', text: ' New cutter ', isChange: true, by: 'FM' });
    setSetUpStandard(bench, 120_000);
    fixComparison(bench, terms);
    timeOldMethod(bench, { part: 'p', perPartMs: 300_000, source: 'stop watch, M. Reed ', by: 'FM' });
    await bench.rest();
    const book = await readReviewBook(bench);
    expect(book.notes).toMatchObject([{ day: '2026-03-02', text: 'New cutter', isChange: true, by: 'FM' }]);
    expect(book.setUpStandards.map(({ standardMs }) => standardMs)).toEqual([120_000]);
    expect(book.comparisons).toMatchObject([{ title: 'One by one', thresholdPct: 10, by: 'FM' }]);
    expect(book.oldTimings).toMatchObject([{ perPartMs: 300_000, source: 'stop watch, M. Reed' }]);
  });

  it('holds two times of one hand, and both are taken away by another record', async () => {
    const { bench } = await emptyBench();
    const both = { part: 'p', perPartMs: 300_000, newPerPartMs: 108_000, source: '', by: 'FM' };
    timeOldMethod(bench, both);
    timeOldMethod(bench, { ...both, part: 'q' });
    removeOldTiming(bench, 't:1', 'FM');
    await bench.rest();
    const { oldTimings } = await readReviewBook(bench);
    expect(oldTimings).toMatchObject([{ key: 't:2', part: 'q', perPartMs: 300_000, newPerPartMs: 108_000 }]);
    expect(() => timeOldMethod(bench, { ...both, newPerPartMs: 0 })).toThrow('requires a time above zero');
    expect(await bench.log.count()).toBe(3);
  });

  it('is taken away by another record', async () => {
    const { bench } = await emptyBench();
    noteDay(bench, { day: '2026-03-02', text: 'Wrong', isChange: false, by: 'FM' });
    removeDayNote(bench, 't:1', 'FM');
    await bench.rest();
    expect((await readReviewBook(bench)).notes).toEqual([]);
    expect(await bench.log.count()).toBe(2);
  });

  it('stays in the book when a comparison is taken back, marked', async () => {
    const { bench } = await emptyBench();
    fixComparison(bench, terms);
    fixComparison(bench, { ...terms, title: 'Again' });
    withdrawComparison(bench, 't:1', ' F2 ');
    await bench.rest();
    expect((await readReviewBook(bench)).comparisons).toMatchObject([
      { title: 'One by one', withdrawn: { by: 'F2' } },
      { title: 'Again' },
    ]);
    expect((await readReviewBook(bench)).comparisons[1]).not.toHaveProperty('withdrawn');
  });

  it('is refused in one sentence where it says nothing, and leaves no record', async () => {
    const { bench } = await emptyBench();
    const wrong = [
      () => noteDay(bench, { day: '2026-03-02', text: '  ', isChange: false, by: '' }),
      () => setSetUpStandard(bench, 0),
      () => fixComparison(bench, { ...terms, title: '' }),
      () => fixComparison(bench, { ...terms, afterFrom: '2026-03-06' }),
      () => fixComparison(bench, { ...terms, beforeTo: '2026-03-01' }),
      () => fixComparison(bench, { ...terms, thresholdPct: 0 }),
      () => timeOldMethod(bench, { part: 'p', perPartMs: 0, source: '', by: '' }),
      () => absorbStoppage(bench, { turn: 't:1', stoppage: 't:2', absorbedMs: -1, by: '' }),
      () =>
        makeQuotation(bench, {
          part: 'p',
          partCode: 'M',
          quantity: 1.5,
          setUpMs: 0,
          perPartMs: 1,
          totalMs: 1,
          lowMs: null,
          highMs: null,
          methodRevision: null,
          study: null,
          note: '',
          by: '',
        }),
    ];
    for (const write of wrong) expect(write).toThrow(RangeError);
    await bench.rest();
    expect(await bench.log.count()).toBe(0);
  });
});

describe('the latest summaries', () => {
  it('of the demo are its twenty days, newest first, measured by its own calendar and set-up standard', async () => {
    const bench = await demoBench();
    const { days, hasOlder } = await readLatestSummaries(bench, new InMemorySummaryShelf(), 4);
    expect(days).toHaveLength(20);
    expect([days[0]!.day, days.at(-1)!.day, hasOlder]).toEqual(['2026-03-27', '2026-03-02', false]);
    expect(minutes(days[3]!.attendedMs)).toBe(450);
    expect(((100 * days[3]!.earnedMs) / days[3]!.attendedMs).toFixed(1)).toBe('96.3');
    const newest = await readLatestSummaries(bench, new InMemorySummaryShelf(), 2);
    // The newest week, and two before it.
    expect([newest.days.length, newest.hasOlder]).toEqual([15, true]);
    await bench.rest();
  });

  it('of an empty log are none', async () => {
    const { bench } = await emptyBench();
    const latest = await readLatestSummaries(bench, new InMemorySummaryShelf(), 4);
    expect([latest.days, latest.hasOlder]).toEqual([[], false]);
  });

  it('know a stoppage that somebody said cost less', async () => {
    const { bench, clock } = await emptyBench();
    startTurn(bench, 'K7', { part: 'p', partCode: 'M', targetMs: 90_000 });
    clock.pass(60_000);
    stopWork(bench, clock.now());
    clock.pass(120_000);
    resumeWork(bench, clock.now());
    clock.pass(30_000);
    markPartDone(bench, clock.now());
    const turn = bench.turn.peek()!;
    absorbStoppage(bench, { turn: turn.id, stoppage: turn.stoppages[0]!.key, absorbedMs: 90_000, by: 'FM' });
    await bench.rest();
    const { days } = await readLatestSummaries(bench, new InMemorySummaryShelf(), 4);
    expect(days[0]!.lost).toMatchObject([{ lostMs: 120_000, costMs: 30_000 }]);
  });
});

describe('figures of single persons', () => {
  it('are shown after the purpose is on record, and not without one', async () => {
    const bench = await demoBench();
    const span = { from: '2026-03-16', to: '2026-03-27' };
    await expect(lookAtPeople(bench, span, { purpose: ' ', by: 'FM' })).rejects.toThrow(
      'lookAtPeople requires a purpose',
    );
    const { figures } = await lookAtPeople(bench, span, { purpose: 'Whom to train on T', by: 'FM' });
    expect(figures.map(({ person }) => person)).toEqual(['K7', 'M2', 'R4']);
    expect(figures.every(({ days, share }) => days >= 5 && share !== null)).toBe(true);
    await bench.rest();
    expect((await readReviewBook(bench)).looksAtPeople).toMatchObject([
      { purpose: 'Whom to train on T', by: 'FM', fromDay: '2026-03-16', toDay: '2026-03-27' },
    ]);
  });

  it('come from one method only: a change that was noted leaves out the weeks before it, and is said', async () => {
    const bench = await demoBench();
    const whole = { from: '2026-03-02', to: '2026-03-27' };
    const since = await lookAtPeople(bench, whole, { purpose: 'Whom to train', by: 'FM' });
    expect(since).toMatchObject({ from: '2026-03-16', to: '2026-03-27', isCut: true });
    const alone = await lookAtPeople(bench, { ...whole, from: '2026-03-16' }, { purpose: 'Again', by: 'FM' });
    expect(alone.isCut).toBe(false);
    expect(since.figures).toEqual(alone.figures);
    await bench.rest();
    expect((await readReviewBook(bench)).looksAtPeople[0]).toMatchObject({ fromDay: '2026-03-16' });
  });

  it('count a part from the newest revision of its method on', async () => {
    const clock = new FakeClock();
    const bench = await demoBench(clock);
    const span = { from: '2026-03-16', to: '2026-03-27' };
    const partsOf = async () =>
      (await lookAtPeople(bench, span, { purpose: 'Try', by: 'FM' })).figures.reduce(
        (sum, { parts }) => sum + parts,
        0,
      );
    const before = await partsOf();
    const part = bench.shop.peek().parts[0]!.id;
    const revised = { kind: 'method-revised', part, elements: [], partsPerCycle: 1, conditions: '' } as const;
    clock.wallMs = Date.parse('2026-03-27T05:00:00Z');
    bench.record(SHOP_STREAM, [revised]);
    // The first is no change: the method was written down, and the work was as it was.
    expect(await partsOf()).toBe(before);
    bench.record(SHOP_STREAM, [revised]);
    const after = await partsOf();
    expect(after).toBeGreaterThan(0);
    expect(after).toBeLessThan(before);
    await bench.rest();
  });

  it('tell nothing of a person with fewer than five days', async () => {
    const bench = await demoBench();
    const span = { from: '2026-03-16', to: '2026-03-20' };
    const { figures } = await lookAtPeople(bench, span, { purpose: 'Try', by: 'FM' });
    expect(figures.every(({ share }) => share === null)).toBe(true);
    await bench.rest();
  });
});

describe('lead times of a period', () => {
  it('fall in the demo from nearly an hour to half of it, and are not told where no lot left', async () => {
    // The simulation of the same shop has means of 56.4 and 28.7 working minutes; lots that were inside when a week
    // was opened, or are still inside at its end, make the difference.
    const bench = await demoBench();
    const before = (await readLeadTime(bench, { from: '2026-03-02', to: '2026-03-06' }))!;
    const after = (await readLeadTime(bench, { from: '2026-03-16', to: '2026-03-27' }))!;
    expect(Math.abs(minutes(before.meanMs) - 56.4)).toBeLessThan(1.5);
    expect(Math.abs(minutes(after.meanMs) - 28.7)).toBeLessThan(0.5);
    expect(await readLeadTime(bench, { from: '2026-05-02', to: '2026-05-06' })).toBeNull();
    await bench.rest();
  });
});

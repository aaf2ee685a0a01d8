import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { setCalendar } from '../../../src/application/shop/set-calendar';
import { answerBreak } from '../../../src/application/turn/answer-break';
import { markPartDone } from '../../../src/application/turn/mark-part-done';
import { startTurn } from '../../../src/application/turn/start-turn';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { correctionHistory } from '../../../src/domain/turn/correction-history';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { ledgerTotals } from '../../../src/domain/turn/ledger-totals';
import { pace } from '../../../src/domain/turn/pace';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';
import { MORNING_MS, stampAt } from '../../support/records';
import { done, ended, type Line, partM, resumed, stopped, turnRecords, undone } from './turn-script';

/** A break from second 600 to second 1,200 of the turn. */
const planned = (fromS = 600, toS = 1_200): Line => [
  0,
  {
    kind: 'shift-planned',
    breaks: [{ fromWallMs: MORNING_MS + fromS * 1_000, toWallMs: MORNING_MS + toS * 1_000 }],
    endsWallMs: null,
  },
];
const answered = (partDone: number, as: 'break' | 'work', fromS = 600, toS = 1_200): TurnFact => ({
  kind: 'break-answered',
  partDone: `t:${partDone}`,
  fromMs: fromS * 1_000,
  toMs: toS * 1_000,
  as,
});
const fold = (lines: readonly Line[]) => foldTurn(turnRecords([planned(), ...lines]));
/** Six parts in 90 s each, to second 540; then one with the break and 80 s of work in it, t:18. */
const upToBreak = [90, 180, 270, 360, 450, 540].map((at): Line => [at, done()]);
const overBreak: Line[] = [...upToBreak, [1_220, done()]];
const asked = (lines: readonly Line[]) =>
  fold(lines).doubts.map(({ kind, fromMs, toMs }) => [kind, fromMs / 1_000, toMs / 1_000]);

describe('a planned break that nobody tapped', () => {
  it('is asked about, with its part out of the mean and its time where it was', () => {
    const turn = fold(overBreak);
    expect(turn.doubts).toEqual([
      { kind: 'planned-break', key: 't:18', fromMs: 600_000, toMs: 1_200_000, suggestion: 'break' },
    ]);
    expect(turn.cycles.at(-1)).toMatchObject({ netMs: 680_000, isCounted: false, doubt: 'planned-break' });
    expect(ledgerTotals(turn.ledger)).toMatchObject({ cycle: 1_220_000, 'planned-break': 0 });
  });

  it('is taken out of the part’s net time when it was taken, and the part counts', () => {
    const turn = fold([...overBreak, [1_221, answered(18, 'break')]]);
    expect(turn.doubts).toEqual([]);
    expect(turn.cycles.at(-1)).toMatchObject({ netMs: 80_000, isCounted: true, doubt: null });
    expect(ledgerTotals(turn.ledger)).toMatchObject({ cycle: 621_000, 'planned-break': 600_000 });
  });

  it('was work when somebody says so, and the last answer holds', () => {
    const worked = fold([...overBreak, [1_221, answered(18, 'break')], [1_222, answered(18, 'work')]]);
    // 680 s where 90 s are usual: too long for two parts, and it is said already that it was work.
    expect(worked.doubts).toEqual([]);
    expect(worked.cycles.at(-1)).toMatchObject({ netMs: 680_000, isCounted: true });
    const again = fold([...overBreak, [1_221, answered(18, 'work')], [1_222, answered(18, 'break')]]);
    expect(again.cycles.at(-1)?.netMs).toBe(80_000);
    expect(fold([...overBreak, [1_221, answered(18, 'work')], [1_222, undone(19)]]).doubts).toHaveLength(1);
  });

  it('is asked about for the stretch of it that lies in one part, from half of it on', () => {
    // Finished 299 s or 300 s into the break: the rest, 301 s or 300 s of 600 s, is in the next part.
    // Of the other part, with 299 s of the break in it, it is asked whether a stop was forgotten.
    expect(asked([...upToBreak, [899, done()], [1_250, done()]])).toEqual([
      ['long-part', 540, 899],
      ['planned-break', 899, 1_200],
    ]);
    expect(asked([...upToBreak, [901, done()], [1_250, done()]])).toEqual([
      ['planned-break', 600, 901],
      ['long-part', 901, 1_250],
    ]);
  });

  it('goes after whatever was tapped: stopped for it early, late, or for another reason, or made parts in it', () => {
    expect(asked([...upToBreak, [580, stopped], [1_150, resumed], [1_240, done()]])).toEqual([]);
    expect(asked([...upToBreak, [800, stopped], [860, resumed], [1_240, done()]])).toEqual([]);
    const throughIt = [630, 720, 810, 900, 990, 1_080, 1_170, 1_260].map((at): Line => [at, done()]);
    expect(asked([...upToBreak, ...throughIt])).toEqual([]);
  });

  it('is none for a part that was never finished, nor where a gap is asked about already', () => {
    expect(asked([...upToBreak, [1_220, ended]])).toEqual([]);
    const gone: Line = [0, { kind: 'page-opened' }, stampAt(1_190_000, { run: 'run-2', monoMs: 100 })];
    const after: Line = [0, done(), stampAt(1_220_000, { run: 'run-2', monoMs: 30_100 })];
    expect(asked([...upToBreak, gone, after])).toEqual([
      ['gap', 540, 1_190],
      ['same-person', 540, 1_190],
    ]);
  });

  it('is two questions where a long part has two breaks in it', () => {
    const two: Line = [
      0,
      {
        kind: 'shift-planned',
        breaks: [100, 300].map((at) => ({
          fromWallMs: MORNING_MS + at * 1_000,
          toWallMs: MORNING_MS + (at + 60) * 1_000,
        })),
        endsWallMs: null,
      },
    ];
    const turn = (...lines: Line[]) => foldTurn(turnRecords([two, [500, done()], ...lines]));
    expect(turn().doubts).toHaveLength(2);
    expect(turn([501, answered(12, 'break', 100, 160)]).cycles[0]).toMatchObject({
      netMs: 440_000,
      isCounted: false,
    });
    const all = turn([501, answered(12, 'break', 100, 160)], [502, answered(12, 'work', 300, 360)]);
    expect(all.cycles[0]).toMatchObject({ netMs: 440_000, isCounted: true });
  });

  it('stands in the history with what was before and after', () => {
    const [answer] = correctionHistory(
      turnRecords([planned(), ...overBreak, [1_221, answered(18, 'break')]]),
    );
    expect(answer).toMatchObject({
      kind: 'break-answered',
      before: { spans: [{ category: 'cycle' }] },
      after: { spans: [{ category: 'planned-break', fromMs: 600_000, toMs: 1_200_000 }] },
    });
  });

  it('moves with the wall clock when that is set before it', () => {
    const set = (atS: number, byS: number): Line => [atS, { kind: 'clock-set', byMs: byS * 1_000 }];
    // Set forward by 200 s: what was planned for second 600 comes at second 400.
    expect(fold([set(100, 200)]).planned.breaks).toEqual([{ fromMs: 400_000, toMs: 1_000_000 }]);
    expect(fold([set(700, 200)]).planned.breaks).toEqual([{ fromMs: 600_000, toMs: 1_000_000 }]);
    expect(fold([set(1_300, 200)]).planned.breaks).toEqual([{ fromMs: 600_000, toMs: 1_200_000 }]);
  });
});

describe('the position', () => {
  it('stands still in a planned break, and goes on after it', () => {
    const turn = fold(upToBreak);
    const ahead = (atS: number) => pace(turn, stampAt(atS * 1_000)).aheadMs;
    // The part in hand began at 540 s; its 90 s are up at 630 s, of which 30 s lie in the break.
    expect([ahead(599), ahead(900), ahead(1_200)]).toEqual([0, 0, 0]);
    expect([ahead(1_230), ahead(1_240)]).toEqual([0, -10_000]);
    // 60 s before the break and 40 s after it, on the clock of a part that began 700 s ago.
    expect(pace(turn, stampAt(1_240_000))).toMatchObject({ partElapsedMs: 700_000, partWorkedMs: 100_000 });
    expect(pace(foldTurn(turnRecords(upToBreak)), stampAt(900_000)).aheadMs).toBe(-270_000);
  });

  it('says until when the break lasts, and nothing once it is over or somebody has stopped', () => {
    const ends = (lines: Line[], atS: number) => pace(fold(lines), stampAt(atS * 1_000)).breakEndsAtMs;
    expect([599, 600, 1_199, 1_200].map((at) => ends(upToBreak, at))).toEqual([
      null,
      1_200_000,
      1_200_000,
      null,
    ]);
    expect(ends([...upToBreak, [650, stopped]], 700)).toBeNull();
    expect(ends([...upToBreak, [650, stopped], [700, resumed]], 710)).toBeNull();
  });

  it('goes on where the operator tapped: a stop in the break is the break', () => {
    const lines: Line[] = [...upToBreak, [650, stopped], [1_150, resumed]];
    // 110 s before the stop and 80 s after it: 190 s for a part of 90 s, now and when it is done.
    expect(pace(fold(lines), stampAt(1_230_000)).aheadMs).toBe(-100_000);
    expect(pace(fold([...lines, [1_230, done()]]), stampAt(1_230_000)).aheadMs).toBe(-100_000);
  });
});

describe('a turn that begins in a shift', () => {
  const calendar = {
    shifts: [
      { name: 'day', weekdays: [1], fromMin: 420, toMin: 930, breaks: [{ fromMin: 430, toMin: 440 }] },
    ],
    exceptions: [],
  };
  const settled = () => new Promise((resolve) => setTimeout(resolve, 200));

  it('has the breaks of the calendar, and answers go the way of every tap', async () => {
    const clock = new FakeClock();
    const bench = await Bench.open(new InMemoryRecordLog('t'), clock);
    setCalendar(bench, calendar);
    startTurn(bench, 'K7', partM);
    await settled();
    expect(bench.turn.value?.planned).toEqual({
      breaks: [{ fromMs: 600_000, toMs: 1_200_000 }],
      endsAtMs: 30_600_000,
    });
    clock.pass(1_290_000);
    markPartDone(bench, clock.now());
    const [doubt] = bench.turn.value!.doubts;
    answerBreak(bench, bench.turn.value!.id, doubt!, 'break', 'F1');
    expect(bench.turn.value).toMatchObject({ doubts: [], cycles: [{ netMs: 690_000 }] });
  });

  it('gets the new ones when the calendar changes while it runs, and none without a calendar', async () => {
    const clock = new FakeClock();
    const bench = await Bench.open(new InMemoryRecordLog('t'), clock);
    startTurn(bench, 'K7', partM);
    await settled();
    expect(bench.turn.value?.planned).toEqual({ breaks: [], endsAtMs: null });
    setCalendar(bench, calendar);
    expect(bench.turn.value?.planned.breaks).toHaveLength(1);
    setCalendar(bench, { shifts: [], exceptions: [] });
    expect(bench.turn.value?.planned).toEqual({ breaks: [], endsAtMs: null });
  });
});

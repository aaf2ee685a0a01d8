import { beforeEach, describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { readAttendedTurns } from '../../../src/application/review/read-attended-turns';
import { readTurnsBetween } from '../../../src/application/review/read-turns-between';
import { readTurnsOfDay, type TurnWithCorrections } from '../../../src/application/review/read-turns-of-day';
import { correctPerson } from '../../../src/application/turn/correct-person';
import { countParts } from '../../../src/application/turn/count-parts';
import { enterTurn, type TurnTold } from '../../../src/application/turn/enter-turn';
import { markPartDone } from '../../../src/application/turn/mark-part-done';
import { startTurn } from '../../../src/application/turn/start-turn';
import { turnsInTheWay } from '../../../src/application/turn/turns-in-the-way';
import { withdrawTurn } from '../../../src/application/turn/withdraw-turn';
import { reviewDay } from '../../../src/domain/day/review-day';
import { summariseDay } from '../../../src/domain/day/summarise-day';
import type { ShiftCalendar } from '../../../src/domain/shop/shift-calendar';
import { capture } from '../../../src/domain/turn/capture';
import { enteredShare } from '../../../src/domain/turn/entered-share';
import { ledgerTotals } from '../../../src/domain/turn/ledger-totals';
import { mealsWithin } from '../../../src/domain/turn/meals-within';
import { turnSpans } from '../../../src/domain/turn/turn-span';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';
import { MORNING_MS } from '../../support/records';
import { partL, partM } from './turn-script';

const HOUR_MS = 3_600_000;
const DAY = '2026-03-02';
const say = { by: 'F1', why: 'tablet was wet' };
/** Four hours of this morning: 60 of M, of them 2 scrapped and 3 reworked, 20 of L, and 20 minutes without material. */
const told: TurnTold = {
  person: 'K7',
  fromWallMs: MORNING_MS,
  toWallMs: MORNING_MS + 4 * HOUR_MS,
  lines: [
    { ...partM, done: 60, rework: 3, scrap: 2 },
    { ...partL, done: 20, rework: 0, scrap: 0 },
  ],
  stops: [{ category: 'stoppage', reason: 'material', label: '', lostMs: 1_200_000 }],
};

let log: InMemoryRecordLog;
let clock: FakeClock;
let bench: Bench;
const settled = () => new Promise((resolve) => setTimeout(resolve, 5));
const turnsOfDay = async () => {
  await settled();
  return (await readTurnsOfDay(bench, DAY)).map(({ turn }) => turn);
};

beforeEach(async () => {
  log = new InMemoryRecordLog('t');
  clock = new FakeClock();
  bench = await Bench.open(log, clock);
  clock.pass(9 * HOUR_MS);
});

describe('a turn that is entered later', () => {
  it('stands on its own day with who entered it, when and why', async () => {
    enterTurn(bench, told, say);
    const [turn] = await turnsOfDay();
    expect(turn).toMatchObject({
      person: 'K7',
      status: 'ended',
      startedAt: { wallMs: MORNING_MS, offsetMin: 60 },
      enteredLater: { by: 'F1', why: 'tablet was wet', at: { wallMs: MORNING_MS + 9 * HOUR_MS } },
      doubts: [],
    });
  });

  it('has the meal of the calendar where it lay, so that work and meal make up its time and work is attended', async () => {
    // Seven to three, with a meal from eleven to half past, and a rest that is no meal.
    const calendar: ShiftCalendar = {
      shifts: [
        {
          name: 'day',
          weekdays: [1],
          fromMin: 420,
          toMin: 900,
          breaks: [
            { fromMin: 540, toMin: 550 },
            { fromMin: 660, toMin: 690 },
          ],
        },
      ],
      exceptions: [],
    };
    const span = { fromWallMs: MORNING_MS, toWallMs: MORNING_MS + 8 * HOUR_MS };
    const meals = mealsWithin(calendar, span, 'Europe/Berlin');
    expect(meals).toMatchObject([{ category: 'planned-break', fromMs: 4 * HOUR_MS, lostMs: HOUR_MS / 2 }]);
    enterTurn(bench, { ...told, ...span, stops: [...meals, ...told.stops] }, say);
    const [turn] = await turnsOfDay();
    const meal = { fromMs: 4 * HOUR_MS, toMs: 4.5 * HOUR_MS };
    const day = summariseDay(DAY, [{ turn: turn!, absorbedMs: new Map(), breaks: [meal] }], null);
    const work = 7.5 * HOUR_MS - 1_200_000;
    expect(day.attendedMs).toBe(7.5 * HOUR_MS);
    expect(day.totals).toMatchObject({ cycle: work, stoppage: 1_200_000, 'planned-break': 0 });
    expect(ledgerTotals(turn!.ledger)).toMatchObject({ cycle: work, 'planned-break': HOUR_MS / 2 });
    expect(turn!.cycles.at(-1)!.toMs).toBe(8 * HOUR_MS - 1_200_000);
    // A turn that begins in the meal has the rest of it; one that is over before it has none.
    const from = (hours: number, to: number) =>
      mealsWithin(
        calendar,
        { fromWallMs: MORNING_MS + hours * HOUR_MS, toWallMs: MORNING_MS + to * HOUR_MS },
        'Europe/Berlin',
      ).map(({ lostMs }) => lostMs / 60_000);
    expect([from(4.25, 6), from(0, 4), from(0, 4.25)]).toEqual([[15], [], [15]]);
  });

  it('of a day before the shop had a calendar is not attended in the meal that was told with it either', async () => {
    const meal = {
      category: 'planned-break',
      reason: 'break',
      label: '',
      lostMs: HOUR_MS / 2,
      fromMs: 2 * HOUR_MS,
    } as const;
    enterTurn(bench, { ...told, stops: [meal, ...told.stops] }, say);
    await settled();
    const [{ spans } = { spans: [] }] = await readAttendedTurns(bench, DAY);
    const day = ledgerTotals(spans);
    expect([day.cycle, day.stoppage, day['planned-break']]).toEqual([
      3.5 * HOUR_MS - 1_200_000,
      1_200_000,
      0,
    ]);
  });

  it('whose work is over before the meal loses the meal from neither work nor stoppage', async () => {
    const meal = { fromMs: 4 * HOUR_MS, toMs: 4.5 * HOUR_MS };
    const mealStop = {
      category: 'planned-break',
      reason: 'break',
      label: '',
      lostMs: HOUR_MS / 2,
      fromMs: 4 * HOUR_MS,
    } as const;
    // Two hours of work, then no material until the shift was over at three.
    const noMaterial = { ...told.stops[0]!, lostMs: 5.5 * HOUR_MS };
    const toWallMs = MORNING_MS + 8 * HOUR_MS;
    enterTurn(bench, { ...told, toWallMs, stops: [mealStop, noMaterial] }, say);
    const [turn] = await turnsOfDay();
    const day = summariseDay(DAY, [{ turn: turn!, absorbedMs: new Map(), breaks: [meal] }], null);
    expect(day.attendedMs).toBe(7.5 * HOUR_MS);
    expect(day.totals).toMatchObject({ cycle: 2 * HOUR_MS, stoppage: 5.5 * HOUR_MS, 'planned-break': 0 });
    expect(day.lost).toMatchObject([{ reason: 'material', lostMs: 5.5 * HOUR_MS }]);
    expect(turn!.cycles.at(-1)!.toMs).toBe(2 * HOUR_MS);
    expect(ledgerTotals(turn!.ledger)['planned-break']).toBe(HOUR_MS / 2);
  });

  it('that tells of no lost time leaves unknown what was lost, until it tells or is taken away', async () => {
    const unknown = async () => {
      const turns = await turnsOfDay();
      const summary = summariseDay(
        DAY,
        turns.map((turn) => ({ turn, absorbedMs: new Map(), breaks: [] })),
        null,
      );
      return [reviewDay(DAY, turns).lostUnknown, summary.lostUnknown];
    };
    enterTurn(bench, told, say);
    expect(await unknown()).toEqual([0, 0]);
    const setUp = { category: 'set-up', reason: 'set-up', label: '', lostMs: 600_000 } as const;
    enterTurn(bench, { ...told, person: 'M2', stops: [setUp] }, say);
    expect(await unknown()).toEqual([1, 1]);
    const [, silent] = await turnsOfDay();
    withdrawTurn(bench, silent!, say);
    expect(await unknown()).toEqual([0, 0]);
  });

  it('has its parts in the counts and none of them in a mean', async () => {
    enterTurn(bench, told, say);
    const day = reviewDay(DAY, await turnsOfDay());
    expect(day).toMatchObject({ done: 80, counted: 0, good: 78, rework: 3, scrap: 2, against: null });
    expect(day.parts).toMatchObject([
      { partCode: 'L', n: 20, meanMs: null },
      { partCode: 'M', n: 60, good: 55, meanMs: null },
    ]);
  });

  it('has all of its time in the ledger, stoppages as told and the rest as work', async () => {
    enterTurn(bench, told, say);
    const [turn] = await turnsOfDay();
    expect(ledgerTotals(turn!.ledger)).toMatchObject({ stoppage: 1_200_000, cycle: 4 * HOUR_MS - 1_200_000 });
    expect(turn!.lastAtMs).toBe(4 * HOUR_MS);
    expect(turn!.cycles.reduce((sum, { netMs }) => sum + netMs, 0)).toBe(4 * HOUR_MS - 1_200_000);
    expect(turnSpans(await log.readStream(turn!.id))).toMatchObject([
      { fromWallMs: MORNING_MS, toWallMs: MORNING_MS + 4 * HOUR_MS },
    ]);
  });

  it('is told apart by its share of the day, and takes nothing from the turn in hand, also after a reload', async () => {
    startTurn(bench, 'M2', partM);
    clock.pass(80_000);
    markPartDone(bench, clock.now());
    const { id } = bench.turn.value!;
    enterTurn(bench, told, say);
    expect(bench.turn.value).toMatchObject({ id, person: 'M2', status: 'running' });
    expect(enteredShare(await turnsOfDay())).toEqual({ entered: 80, done: 81 });
    clock.reload(2_000);
    expect((await Bench.open(log, clock)).turn.value?.id).toBe(id);
    expect(enteredShare([bench.turn.value!])).toBeNull();
  });

  it('can be put right like any other', async () => {
    enterTurn(bench, told, say);
    const [turn] = await turnsOfDay();
    correctPerson(bench, turn!.id, 'M2', { by: 'F1', why: 'slip' });
    const [corrected] = await readTurnsOfDay(bench, DAY);
    expect(corrected!.turn).toMatchObject({ person: 'M2', lastAtMs: 4 * HOUR_MS });
    expect(corrected!.corrections.map(({ kind }) => kind)).toEqual(['turn-started', 'person-corrected']);
  });

  it('is in the log as what it is: by whom, why, and with how many parts', async () => {
    enterTurn(bench, told, say);
    await settled();
    const [{ corrections }] = (await readTurnsOfDay(bench, DAY)) as [TurnWithCorrections];
    expect(corrections).toMatchObject([
      { ...say, before: { done: 0 }, after: { done: 80 }, at: { wallMs: MORNING_MS + 9 * HOUR_MS } },
    ]);
  });

  it('can be taken away again, and then nothing of it counts and the log says who did', async () => {
    enterTurn(bench, told, say);
    const [turn] = await turnsOfDay();
    withdrawTurn(bench, turn!, { by: 'F2', why: 'entered twice' });
    const turns = await turnsOfDay();
    expect(reviewDay(DAY, turns)).toMatchObject({ turns: 0, done: 0, elapsedMs: 0, parts: [] });
    expect(await readTurnsBetween(bench, { from: DAY, to: DAY })).toEqual([]);
    const [{ corrections }] = (await readTurnsOfDay(bench, DAY)) as [TurnWithCorrections];
    expect(corrections.at(-1)).toMatchObject({
      kind: 'turn-withdrawn',
      by: 'F2',
      before: { done: 80 },
      after: { done: 0 },
    });
  });

  it('is found in the way of another one at the same time, until it is taken away', async () => {
    enterTurn(bench, told, say);
    const [turn] = await turnsOfDay();
    const inTheWay = (fromHour: number, toHour: number) =>
      turnsInTheWay(bench, {
        fromWallMs: MORNING_MS + fromHour * HOUR_MS,
        toWallMs: MORNING_MS + toHour * HOUR_MS,
      });
    expect(await inTheWay(3, 5)).toMatchObject([{ person: 'K7' }]);
    expect(await inTheWay(4, 5)).toEqual([]);
    withdrawTurn(bench, turn!, say);
    await settled();
    expect(await inTheWay(3, 5)).toEqual([]);
  });

  it('is the only kind that can be taken away', () => {
    startTurn(bench, 'M2', partM);
    expect(() => withdrawTurn(bench, bench.turn.value!, say)).toThrow(/written down afterwards/);
  });

  const refusals: [string, Partial<TurnTold>, { by: string; why: string }?][] = [
    ['enterTurn requires who wrote it down, and why', {}, { by: ' ', why: 'x' }],
    ['enterTurn requires who wrote it down, and why', {}, { by: 'F1', why: '' }],
    ['enterTurn requires a turn of at most a day that has ended', { toWallMs: MORNING_MS }],
    ['enterTurn requires a turn of at most a day that has ended', { toWallMs: MORNING_MS + 10 * HOUR_MS }],
    ['enterTurn requires a turn of at most a day that has ended', { fromWallMs: MORNING_MS - 25 * HOUR_MS }],
    ['enterTurn requires whole numbers of parts', { lines: [] }],
    ['enterTurn requires whole numbers of parts', { lines: [{ ...partM, done: 5, rework: 3, scrap: 3 }] }],
    ['enterTurn requires whole numbers of parts', { lines: [{ ...partM, done: 1.5, rework: 0, scrap: 0 }] }],
    [
      'enterTurn requires stoppages that are no longer than the turn',
      { stops: [{ category: 'stoppage', reason: 'material', label: '', lostMs: 5 * HOUR_MS }] },
    ],
  ];
  for (const [words, change, who = say] of refusals) {
    it(`is refused with ${JSON.stringify({ ...change, ...who }).slice(0, 90)}: ${words}`, () => {
      const before = bench.changes.value;
      expect(() => enterTurn(bench, { ...told, ...change }, who)).toThrow(words);
      expect(bench.changes.value).toBe(before);
    });
  }
});

describe('a count by hand', () => {
  it('says how much of the work was tapped, and marks the day as partial below nine tenths', async () => {
    startTurn(bench, 'K7', partM);
    for (let part = 0; part < 9; part += 1) {
      clock.pass(80_000);
      markPartDone(bench, clock.now());
    }
    expect(capture([bench.turn.value!])).toBeNull();
    countParts(bench, bench.turn.value!.id, 10);
    expect(capture([bench.turn.value!])).toEqual({ tapped: 9, counted: 10, share: 0.9, isPartial: false });
    countParts(bench, bench.turn.value!.id, 11, 'F1');
    expect(capture([bench.turn.value!])).toMatchObject({ counted: 11, isPartial: true });
    expect(() => countParts(bench, bench.turn.value!.id, -1)).toThrow(
      'countParts requires a whole number of parts',
    );
  });

  it('leaves turns out in which nobody counted, and parts that were never tapped', async () => {
    startTurn(bench, 'K7', partM);
    clock.pass(80_000);
    markPartDone(bench, clock.now());
    enterTurn(bench, told, say);
    const turns = await turnsOfDay();
    const entered = turns.find(({ enteredLater }) => enteredLater)!;
    countParts(bench, entered.id, 80);
    expect(capture(await turnsOfDay())).toEqual({ tapped: 0, counted: 80, share: 0, isPartial: true });
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reviewDay } from '../../../src/domain/day/review-day';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { pace } from '../../../src/domain/turn/pace';
import { done, partM, partV, turnOf } from './turn-of-day';

const DAY = '2026-03-02';

describe('reviewDay', () => {
  it('takes stoppages out of the mean and the spread of a part', () => {
    // Done after 80 s, 90 s, and 190 s of which 60 s stood still. By hand: net 80, 90, 130; mean 300/3 = 100;
    // deviations −20, −10, 30; squares 400 + 100 + 900 = 1400; /2 = 700; √700 = 26.4575 s.
    const turn = turnOf([
      [80, done()],
      [170, done()],
      [200, { kind: 'stopped' }],
      [260, { kind: 'resumed' }],
      [360, done()],
    ]);
    const [m] = reviewDay(DAY, [turn]).parts;
    expect(m).toMatchObject({ partCode: 'M', n: 3, good: 3, meanMs: 100_000, shortestMs: 80_000 });
    expect(m!.netTimesMs).toEqual([80_000, 90_000, 130_000]);
    expect(m!.longestMs).toBe(130_000);
    expect(m!.deviationMs).toBeCloseTo(26_457.513, 3);
    // 300 s taken, 3 × 90 = 270 s allowed.
    expect(m!.against).toEqual({ n: 3, good: 3, netMs: 300_000, targetMs: 270_000, share: 300 / 270 });
  });

  it('adds the ledger up to the elapsed time', () => {
    // Work to 360 s with 60 s of it stopped, then 40 s without a part: 300 + 60 + 40 = 400.
    const turn = turnOf([
      [170, done()],
      [200, { kind: 'stopped' }],
      [260, { kind: 'resumed' }],
      [360, done()],
      [400, { kind: 'turn-ended' }],
    ]);
    const day = reviewDay(DAY, [turn]);
    expect(day.elapsedMs).toBe(400_000);
    expect(day.totals).toEqual({
      cycle: 300_000,
      'set-up': 0,
      stoppage: 60_000,
      rework: 0,
      'planned-break': 0,
      'called-away': 0,
      unaccounted: 40_000,
    });
  });

  it('adds the ledger up whatever is tapped, in whatever order', () => {
    const anyTap = fc.constantFrom<TurnFact>(
      done(),
      done(partV),
      { kind: 'stopped' },
      { kind: 'resumed' },
      { kind: 'part-changed', ...partV },
      { kind: 'turn-ended' },
      { kind: 'slept', sleptMs: 5_000 },
    );
    const anyTurn = fc.array(fc.tuple(fc.integer({ min: 0, max: 600 }), anyTap), { maxLength: 30 });
    fc.assert(
      fc.property(anyTurn, anyTurn, (one, other) => {
        const inOrder = (taps: [number, TurnFact][]) => taps.sort(([a], [b]) => a - b);
        const day = reviewDay(DAY, [turnOf(inOrder(one)), turnOf(inOrder(other), { sequence: 100 })]);
        const sum = Object.values(day.totals).reduce((total, ms) => total + ms, 0);
        expect(sum).toBe(day.elapsedMs);
        expect(day.good + day.scrap).toBe(day.done);
      }),
      { seed: 20260302, numRuns: 300 },
    );
  });

  it('gives one part its mean and no spread', () => {
    const [m] = reviewDay(DAY, [turnOf([[95, done()]])]).parts;
    expect(m).toMatchObject({
      n: 1,
      meanMs: 95_000,
      deviationMs: null,
      shortestMs: 95_000,
      longestMs: 95_000,
    });
    expect(m!.against!.share).toBe(95 / 90);
  });

  it('gives two parts a spread', () => {
    // 80 s and 100 s: mean 90, deviations −10 and 10, squares 200, /1 = 200; √200 = 14.1421 s.
    const turn = turnOf([
      [80, done()],
      [180, done()],
    ]);
    expect(reviewDay(DAY, [turn]).parts[0]!.deviationMs).toBeCloseTo(14_142.136, 3);
  });

  it('counts a day of scrap as parts done, none of them good, and keeps the time they took', () => {
    const turn = turnOf([
      [100, done()],
      [200, done()],
      [201, { kind: 'part-judged', partDone: 't:2', outcome: 'scrap' }],
      [202, { kind: 'part-judged', partDone: 't:3', outcome: 'scrap' }],
    ]);
    const day = reviewDay(DAY, [turn]);
    expect(day).toMatchObject({ done: 2, good: 0, rework: 0, scrap: 2 });
    expect(day.parts[0]).toMatchObject({ n: 2, good: 0, scrap: 2, meanMs: 100_000 });
    // Nothing was earned, so there is nothing to compare with.
    expect(day.against).toBeNull();
  });

  it('lets a scrapped part take its time and earn no target, as the operator’s position does', () => {
    // 80 + 100 + 90 s taken; two good parts earn 2 × 90 s. The position: 180 − 270 = 90 s behind.
    const turn = turnOf([
      [80, done()],
      [180, done()],
      [270, done()],
      [271, { kind: 'part-judged', partDone: 't:3', outcome: 'scrap' }],
    ]);
    const { against } = reviewDay(DAY, [turn]);
    expect(against).toEqual({ n: 3, good: 2, netMs: 270_000, targetMs: 180_000, share: 1.5 });
    expect(pace({ ...turn, status: 'ended' }, turn.lastStamp).aheadMs).toBe(-90_000);
  });

  it('counts a reworked part as good at last, not as good the first time', () => {
    const turn = turnOf([
      [100, done()],
      [200, done()],
      [201, { kind: 'part-judged', partDone: 't:3', outcome: 'rework' }],
    ]);
    const day = reviewDay(DAY, [turn]);
    expect(day).toMatchObject({ done: 2, good: 2, rework: 1, scrap: 0 });
    expect(day.parts[0]).toMatchObject({ good: 1, rework: 1 });
  });

  it('shows a day of nothing but stoppages as time without parts', () => {
    // Called away from 10 s to 70 s, gone at 100 s: 60 s called away, the other 40 s unaccounted.
    const turn = turnOf([
      [10, { kind: 'stopped' }],
      [70, { kind: 'resumed' }],
      [
        71,
        {
          kind: 'stoppage-explained',
          stoppage: 't:2',
          reason: 'called-away',
          label: '',
          category: 'called-away',
        },
      ],
      [100, { kind: 'turn-ended' }],
    ]);
    const day = reviewDay(DAY, [turn]);
    expect(day).toMatchObject({ done: 0, good: 0, parts: [], against: null, elapsedMs: 100_000 });
    expect(day.totals).toMatchObject({ cycle: 0, 'called-away': 60_000, unaccounted: 40_000 });
    expect(day.lost).toEqual([{ reason: 'called-away', label: '', count: 1, lostMs: 60_000, seconds: 60 }]);
  });

  it('measures every part by the target it carried when the target changed in mid-day', () => {
    // 90 s and 90 s against 90 s, then 60 s against 60 s: 240 taken, 240 allowed. The mean of 80 s beside the
    // last target of 60 s alone would read 133 %.
    const faster = { ...partM, targetMs: 60_000 };
    const turn = turnOf([
      [90, done()],
      [180, done()],
      [181, { kind: 'part-changed', ...faster }],
      [240, done(faster)],
    ]);
    const [m] = reviewDay(DAY, [turn]).parts;
    expect(m).toMatchObject({ meanMs: 80_000, targetMs: 60_000, targetChanged: true });
    expect(m!.against).toEqual({ n: 3, good: 3, netMs: 240_000, targetMs: 240_000, share: 1 });
  });

  it('takes the last target by the time of day, not by the order in which the turns come', () => {
    const morning = turnOf([[90, done()]]);
    const faster = { ...partM, targetMs: 60_000 };
    const afternoon = turnOf([[60, done(faster)]], { first: faster, beginsAtS: 20_000, sequence: 50 });
    for (const turns of [
      [morning, afternoon],
      [afternoon, morning],
    ]) {
      expect(reviewDay(DAY, turns).parts[0]).toMatchObject({
        targetMs: 60_000,
        netTimesMs: [90_000, 60_000],
      });
    }
  });

  it('leaves parts without a target out of the comparison and keeps them in the mean', () => {
    const untargeted = { ...partM, targetMs: null };
    const turn = turnOf([
      [80, done()],
      [200, done(untargeted)],
    ]);
    const [m] = reviewDay(DAY, [turn]).parts;
    expect(m).toMatchObject({ n: 2, meanMs: 100_000, targetMs: null, targetChanged: true });
    expect(m!.against).toEqual({ n: 1, good: 1, netMs: 80_000, targetMs: 90_000, share: 80 / 90 });
    expect(reviewDay(DAY, [turnOf([[120, done(untargeted)]], { first: untargeted })]).against).toBeNull();
  });

  it('does not read a day of large parts as a slow one', () => {
    // One M in 90 s and three V in 130 s each: 480 s taken, 480 s allowed.
    const turn = turnOf([
      [90, done()],
      [220, done(partV)],
      [350, done(partV)],
      [480, done(partV)],
    ]);
    expect(reviewDay(DAY, [turn]).against!.share).toBe(1);
  });

  it('keeps parts of one code and two ids apart, in the order of the codes, 2 before 10', () => {
    const part = (id: string, partCode: string) => done({ part: id, partCode, targetMs: null });
    const turn = turnOf([
      [10, part('a', '10')],
      [20, part('b', '2')],
      [30, part('c', '2')],
    ]);
    expect(reviewDay(DAY, [turn]).parts.map(({ part: id }) => id)).toEqual(['b', 'c', 'a']);
  });

  it('counts a turn that is still open to its last record', () => {
    const day = reviewDay(DAY, [
      turnOf([
        [90, done()],
        [100, { kind: 'stopped' }],
        [130, { kind: 'slept', sleptMs: 0 }],
      ]),
    ]);
    expect(day).toMatchObject({ openTurns: 1, elapsedMs: 130_000 });
    expect(day.lost).toEqual([{ reason: 'not-stated', label: '', count: 1, lostMs: 30_000, seconds: 30 }]);
  });

  it('is empty, not an error, without a turn', () => {
    expect(reviewDay(DAY, [])).toMatchObject({
      turns: 0,
      parts: [],
      done: 0,
      elapsedMs: 0,
      lost: [],
      against: null,
    });
  });
});

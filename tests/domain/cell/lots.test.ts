import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldLots } from '../../../src/domain/cell/fold-lots';
import { leadTimes, processCycleEfficiency } from '../../../src/domain/cell/lead-times';
import { workingClock } from '../../../src/domain/cell/working-time';
import type { Fact } from '../../../src/domain/records/log-record';
import { MORNING_MS, recordAt } from '../../support/records';

const MINUTE_MS = 60_000;
const wall = (wallMs: number) => wallMs;

/** Records of one day, each with its minute: +20 is a lot of 20 that arrives, −8 a trolley of 8 that leaves. */
function lotsOf(moves: readonly (readonly [minute: number, parts: number, lot?: string])[]) {
  const records = moves.map(([minute, parts, lot = ''], place) => {
    const fact: Fact =
      parts > 0 ? { kind: 'lot-arrived', parts, lot } : { kind: 'lot-released', parts: -parts, lot };
    return recordAt(place + 2, minute * MINUTE_MS, 't:1', fact);
  });
  return [recordAt<Fact>(1, 0, 't:1', { kind: 'lots-opened', starts: 'lots' }), ...records];
}

describe('lots at the cell', () => {
  it('leave in the order they came, in trolleys of another size', () => {
    const { stays, inside, unseen } = foldLots(
      lotsOf([
        [0, 5],
        [10, 5],
        [20, -8],
      ]),
    );
    expect(
      stays.map(({ parts, arrivedWallMs }) => [parts, (arrivedWallMs - MORNING_MS) / MINUTE_MS]),
    ).toEqual([
      [5, 0],
      [3, 10],
    ]);
    expect(inside).toMatchObject([{ parts: 2 }]);
    expect(unseen).toBe(0);
  });

  it('leave out of turn when they are named', () => {
    const { inside } = foldLots(
      lotsOf([
        [0, 5, 'A'],
        [1, 5, 'B'],
        [2, -5, 'B'],
      ]),
    );
    expect(inside.map(({ lot }) => lot)).toEqual(['A']);
  });

  it('that nobody saw arrive are counted as unseen, and have no lead time', () => {
    const { stays, unseen } = foldLots(
      lotsOf([
        [0, 5],
        [1, -8],
      ]),
    );
    expect(stays).toHaveLength(1);
    expect(unseen).toBe(3);
  });

  it('are as if they had not come where that was taken back', () => {
    const records = lotsOf([
      [0, 5],
      [1, 5],
    ]);
    const lots = foldLots([
      ...records,
      recordAt<Fact>(9, 2 * MINUTE_MS, 't:1', { kind: 'undone', of: 't:3' }),
    ]);
    expect(lots.inside).toHaveLength(1);
    expect(lots.last).toEqual({ key: 't:2', stream: 't:1' });
  });

  it('are all somewhere: what came has left or is inside, whatever the order', () => {
    const move = fc.tuple(
      fc.nat(500),
      fc.oneof(fc.integer({ min: 1, max: 30 }), fc.integer({ min: -30, max: -1 })),
      fc.constantFrom('', 'A', 'B'),
    );
    fc.assert(
      fc.property(fc.array(move, { maxLength: 30 }), (moves) => {
        const { stays, inside, unseen } = foldLots(lotsOf(moves));
        const sum = (of: readonly { parts: number }[]) => of.reduce((total, { parts }) => total + parts, 0);
        const came = moves.reduce((total, [, parts]) => total + Math.max(0, parts), 0);
        const left = moves.reduce((total, [, parts]) => total + Math.max(0, -parts), 0);
        expect(sum(stays) + sum(inside)).toBe(came);
        expect(sum(stays) + unseen).toBe(left);
      }),
    );
  });
});

describe('lead times', () => {
  const lots = foldLots(
    lotsOf([
      [0, 2],
      [30, -1],
      [60, 2],
      [90, -3],
    ]),
  );

  it('are those of each part: 30, 90, 30 and 30 minutes by the clock', () => {
    const times = leadTimes(lots, wall)!;
    expect(times.timesMs.map((ms) => ms / MINUTE_MS)).toEqual([30, 90, 30, 30]);
    expect(times.meanMs / MINUTE_MS).toBe(45);
    expect(times.longestMs / MINUTE_MS).toBe(90);
  });

  it('obey Little’s law exactly over a time that begins and ends empty: 180 part minutes in 90', () => {
    const { meanInside, insideByLittle } = leadTimes(lots, wall)!;
    expect(meanInside).toBeCloseTo(2, 12);
    expect(insideByLittle).toBeCloseTo(2, 12);
  });

  it('count no minute in which the cell did not work', () => {
    const clock = workingClock([
      { fromWallMs: MORNING_MS, toWallMs: MORNING_MS + 40 * MINUTE_MS },
      { fromWallMs: MORNING_MS + 70 * MINUTE_MS, toWallMs: MORNING_MS + 200 * MINUTE_MS },
    ]);
    // 40 to 70 is a break: 30, 60, 20 and 20 minutes of work.
    expect(leadTimes(lots, clock)!.timesMs.map((ms) => ms / MINUTE_MS)).toEqual([30, 60, 20, 20]);
  });

  it('by the clock on the wall tell apart what was inside while the cell was left for the night', () => {
    const night = 14 * 60;
    const over = foldLots(
      lotsOf([
        [0, 1],
        [20, -1],
        [30, 1],
        [night, -1],
        [night + 1, 1],
        [night + 31, -1],
      ]),
    );
    const worked = workingClock([
      { fromWallMs: MORNING_MS, toWallMs: MORNING_MS + 40 * MINUTE_MS },
      { fromWallMs: MORNING_MS + (night - 10) * MINUTE_MS, toWallMs: MORNING_MS + (night + 60) * MINUTE_MS },
    ]);
    const byWall = leadTimes(over, wall, worked)!;
    expect(byWall.timesMs.map((ms) => ms / MINUTE_MS)).toEqual([20, 30]);
    expect(byWall.overnight).toBe(1);
    // Little's law is about all of them: 20, 810 and 30 minutes.
    expect(byWall.insideByLittle).toBeCloseTo(860 / (night + 31), 9);
    expect(leadTimes(over, worked)!.timesMs.map((ms) => ms / MINUTE_MS)).toEqual([20, 20, 30]);
  });

  it('have no shares below ten parts', () => {
    const of = (parts: number) =>
      leadTimes(
        foldLots(
          lotsOf([
            [0, parts],
            [9, -parts],
          ]),
        ),
        wall,
      )!;
    expect([of(9).isEnough, of(10).isEnough]).toEqual([false, true]);
  });

  it('are none while nothing has left', () => {
    expect(leadTimes(foldLots(lotsOf([[0, 5]])), wall)).toBeNull();
  });
});

describe('process cycle efficiency', () => {
  it('is the share of the lead time in which the part itself was worked on', () => {
    expect(processCycleEfficiency(1.2, 28.7)).toBeCloseTo(0.0418, 4);
  });

  it('never passes 1: where the lead time is shorter than the work there is none', () => {
    expect(processCycleEfficiency(10, 10)).toBe(1);
    expect(processCycleEfficiency(10, 9.9)).toBeNull();
    expect(processCycleEfficiency(0, 0)).toBeNull();
  });
});

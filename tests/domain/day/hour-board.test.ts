import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { attendedSpans } from '../../../src/domain/day/attended-spans';
import { hourBoard } from '../../../src/domain/day/hour-board';
import { type AttendedTurn, summariseDay, type TurnToSummarise } from '../../../src/domain/day/summarise-day';
import { anyTurn } from './random-day';
import { done, turnOf } from './turn-of-day';

const attended = (of: TurnToSummarise): AttendedTurn => ({ ...of, spans: attendedSpans(of.turn, of.breaks) });

describe('the board of hours', () => {
  it('plans what the day attended and earns what the day earned, for any turns', () => {
    fc.assert(
      fc.property(anyTurn(1), anyTurn(100), (one, two) => {
        const day = summariseDay('2026-03-02', [one, two], 120_000);
        const hours = hourBoard([one, two].map(attended), 120_000);
        const sum = (of: 'plannedMs' | 'earnedMs' | 'goodParts') =>
          hours.reduce((total, hour) => total + hour[of], 0);
        expect(sum('earnedMs')).toBeCloseTo(day.earnedMs, 3);
        expect(sum('goodParts')).toBe(day.good);
        expect(sum('plannedMs')).toBeCloseTo(day.attendedMs, 3);
        expect(hours.every(({ fromWallMs }) => fromWallMs % 3_600_000 === 0)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('plans no more than the sixty minutes of an hour: a meal is out of it, a rest is in', () => {
    const planned = (breakMs: number) => {
      const turn = turnOf([[7_200, done()]]);
      const away = { fromMs: 600_000, toMs: 600_000 + breakMs };
      return hourBoard([attended({ turn, absorbedMs: new Map(), breaks: [away] })], null).map(
        ({ plannedMs }) => plannedMs / 60_000,
      );
    };
    expect(planned(600_000)).toEqual([60, 60]);
    expect(planned(1_800_000)).toEqual([30, 60]);
  });

  it('says of an hour in which nothing ended that it is silent, and puts a part that ends on the stroke before it', () => {
    const turn = turnOf([
      [3_600, done()],
      [7_300, done()],
    ]);
    const hours = hourBoard([attended({ turn, absorbedMs: new Map(), breaks: [] })], null);
    expect(hours.map(({ goodParts, isSilent }) => [goodParts, isSilent])).toEqual([
      [1, false],
      [0, true],
      [1, false],
    ]);
  });

  it('names what lost most of an hour, a reason before what nobody stated', () => {
    const turn = turnOf([
      [10, { kind: 'stopped' }],
      [40, { kind: 'resumed' }],
      [
        40,
        {
          kind: 'stoppage-explained',
          stoppage: 't:2',
          reason: 'machine',
          label: 'Saw',
          category: 'stoppage',
        },
      ],
      [50, { kind: 'stopped' }],
      [500, { kind: 'resumed' }],
      [600, done()],
    ]);
    const [hour] = hourBoard([attended({ turn, absorbedMs: new Map(), breaks: [] })], null);
    expect(hour!.cause).toEqual({ reason: 'machine', label: 'Saw', lostMs: 30_000 });
  });
});

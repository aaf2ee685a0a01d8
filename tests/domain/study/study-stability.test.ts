import { describe, expect, it } from 'vitest';
import type { StudyRow } from '../../../src/domain/study/study-row';
import { studyStability } from '../../../src/domain/study/study-stability';
import { fixtureRows } from './demo-rows';

/** Cycles of one element, in milliseconds, rated 100; made up. */
const cycles = (times: readonly number[]): StudyRow[] =>
  times.map((observedMs, place) => ({ ...fixtureRows()[0]!, cycle: place + 1, observedMs, ratingPct: 100 }));

describe('stability', () => {
  it('is shown by the invented shop’s study of week 4: no trend, and rating took the spread from 7.2 to 4.5 %', () => {
    const { trend, spread, hasLongRun } = studyStability(fixtureRows());
    expect(trend).toBeNull();
    expect(hasLongRun).toBe(false);
    expect(spread!.observed * 100).toBeCloseTo(7.2, 1);
    expect(spread!.rated * 100).toBeCloseTo(4.5, 1);
  });

  it('is missing while somebody learns: each cycle 2 % shorter than the one before', () => {
    const learning = Array.from({ length: 20 }, (_, place) => 60_000 * 0.98 ** place + (place % 3) * 200);
    const { trend, change } = studyStability(cycles(learning));
    expect(trend).toBe('falling');
    // 0.98 to the power of 19 is 0.681; the wobble of up to 400 ms moves it by less than one in a hundred.
    expect(change).toBeCloseTo(-0.31, 1);
  });

  it('is missing while a tool dulls', () => {
    const dulling = Array.from({ length: 20 }, (_, place) => 60_000 + place * 900 + (place % 4) * 250);
    expect(studyStability(cycles(dulling)).trend).toBe('rising');
  });

  it('names the cycle beyond the natural limits', () => {
    const times = [60, 61, 59, 60, 62, 60, 90, 61, 60, 59].map((seconds) => seconds * 1_000);
    expect(studyStability(cycles(times)).beyond).toEqual([6]);
  });

  it('has no limit below no time at all, however widely the cycles stray', () => {
    const limits = studyStability(cycles([1_000, 60_000, 2_000, 55_000, 1_500, 58_000])).limits!;
    expect(limits.lower).toBe(0);
    expect(limits.upper).toBeGreaterThan(limits.centre);
  });

  it('sees eight in a row on one side', () => {
    const times = [...Array(8).fill(61_000), ...Array(4).fill(58_000)].map(
      (ms, place) => ms + (place % 2) * 100,
    );
    expect(studyStability(cycles(times)).hasLongRun).toBe(true);
  });

  it('has no trend to speak of below ten cycles: there are no halves to compare', () => {
    const five = [60_000, 50_000, 40_000, 30_000, 20_000];
    expect(studyStability(cycles(five))).toMatchObject({ trend: null, isTrendTested: false });
  });

  it('is not judged below five cycles', () => {
    expect(studyStability(cycles([60_000, 50_000, 40_000, 30_000]))).toMatchObject({
      trend: null,
      spread: null,
    });
  });
});

import { describe, expect, it } from 'vitest';
import { clockOf } from '../../../src/screens/study/clock-reading';

const typed = { started: '10:00', finished: '10:07:30', before: '1,50', after: '1.13' };

describe('a clock check as it is typed', () => {
  it('reads times of day with and without seconds, and minutes with a point or a comma', () => {
    expect(clockOf(typed)).toEqual({ elapsedMs: 450_000, beforeMs: 90_000, afterMs: 67_800 });
  });

  it('goes past midnight', () => {
    expect(clockOf({ ...typed, started: '23:50', finished: '0:10' })?.elapsedMs).toBe(1_200_000);
  });

  it('is none where a time is none, or the clock stood still', () => {
    for (const part of [{ started: '' }, { started: '24:00' }, { finished: '10.07' }, { before: 'x' }]) {
      expect(clockOf({ ...typed, ...part })).toBeNull();
    }
    expect(clockOf({ ...typed, finished: '10:00' })).toBeNull();
  });
});

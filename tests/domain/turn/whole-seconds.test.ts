import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wholeSeconds } from '../../../src/domain/turn/whole-seconds';

describe('wholeSeconds', () => {
  it('gives whole seconds whose sum is the sum in whole seconds', () => {
    // 1.6 → 1, 3.2 → 3 (two more), 4.8 → 4 (one more); each alone would be cut to 1, and 3 is not 4.
    expect(wholeSeconds([1_600, 1_600, 1_600])).toEqual([1, 2, 1]);
  });

  it('adds up for any durations, each within a second of itself', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 30_000_000 }), { maxLength: 8 }), (durations) => {
        const seconds = wholeSeconds(durations);
        const totalMs = durations.reduce((sum, value) => sum + value, 0);
        expect(seconds.reduce((sum, value) => sum + value, 0)).toBe(Math.floor(totalMs / 1_000));
        seconds.forEach((value, place) => {
          expect(Math.abs(value - durations[place]! / 1_000)).toBeLessThan(1);
        });
      }),
    );
  });
});

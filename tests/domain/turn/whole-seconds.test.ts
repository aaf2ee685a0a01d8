import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wholeSeconds } from '../../../src/domain/turn/whole-seconds';

/** Spans without a gap, each as long as given. */
function spansOf(durations: readonly number[]): { fromMs: number; toMs: number }[] {
  let atMs = 0;
  return durations.map((durationMs) => {
    const fromMs = atMs;
    atMs += durationMs;
    return { fromMs, toMs: atMs };
  });
}

describe('wholeSeconds', () => {
  it('gives spans whole seconds that add up to the whole of them', () => {
    // 1.6 s three times ends at 1.6, 3.2 and 4.8 s: 1, then 2 more, then 1 more. Each cut alone is 1, and 3 is not 4.
    expect(spansOf([1_600, 1_600, 1_600]).map(wholeSeconds)).toEqual([1, 2, 1]);
  });

  it('adds up for any spans, each within a second of its duration', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 30_000_000 }), { maxLength: 20 }), (durations) => {
        const seconds = spansOf(durations).map(wholeSeconds);
        const totalMs = durations.reduce((sum, value) => sum + value, 0);
        expect(seconds.reduce((sum, value) => sum + value, 0)).toBe(Math.floor(totalMs / 1_000));
        seconds.forEach((value, place) => {
          expect(Math.abs(value - durations[place]! / 1_000)).toBeLessThan(1);
        });
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { modifiedZFlag } from '../../src/statistics/modified-z-flag';
import { badReadings, saysRule } from './bad-readings';

describe('modifiedZFlag', () => {
  it('finds two wild readings that hide each other from the mean and deviation', () => {
    const readings = [0.44, 0.45, 0.43, 0.46, 0.44, 0.45, 0.42, 0.91, 0.92];
    expect(modifiedZFlag(readings)).toMatchObject({ tested: true, flagged: [7, 8] });
  });

  it('scores 0.6745 for a reading one median distance above the median, by the definition', () => {
    const flag = modifiedZFlag([1, 2, 3, 4, 5, 6, 7], { scale: 'raw' });
    // Median 4, median distance 2: the reading 6 lies one median distance above.
    expect(flag.tested && flag.scores[5]).toBeCloseTo(0.6745, 12);
  });

  it('makes no test below seven readings, or when more than half are equal', () => {
    expect(modifiedZFlag([1, 2, 3, 4, 5, 600])).toEqual({ tested: false, reason: 'too-few-readings' });
    expect(modifiedZFlag([2, 2, 2, 2, 2, 3, 900])).toEqual({ tested: false, reason: 'no-spread' });
    expect(modifiedZFlag(new Array(8).fill(3))).toEqual({ tested: false, reason: 'no-spread' });
  });

  it('flags the same readings in any unit of time', () => {
    // Powers of two, which scale without rounding: a score beside the threshold must not change sides.
    const times = fc.array(fc.double({ min: 0.01, max: 100, noNaN: true }), { minLength: 7, maxLength: 40 });
    fc.assert(
      fc.property(times, fc.constantFrom(2, 1024, 1 / 64), (readings, factor) => {
        const scaled = readings.map((reading) => reading * factor);
        expect(modifiedZFlag(scaled, { scale: 'raw' })).toEqual(modifiedZFlag(readings, { scale: 'raw' }));
      }),
    );
  });

  it('keeps every score a number, however close the others lie together', () => {
    const nearlyEqual = [1, 1 + 2e-16, 1, 1 + 4e-16, 1 + 2e-16, 1 + 6e-16, 1e150];
    const flag = modifiedZFlag(nearlyEqual, { scale: 'raw' });
    if (flag.tested) expect(flag.scores.every(Number.isFinite)).toBe(true);
    expect(flag.tested).toBe(true);
  });

  it.each(badReadings)('refuses readings with %s', (_, readings) => {
    expect(() => modifiedZFlag(readings)).toThrow(saysRule('modifiedZFlag'));
  });

  it('refuses a time of zero on the log scale', () => {
    expect(() => modifiedZFlag([1, 2, 3, 4, 5, 6, 0])).toThrow('modifiedZFlag requires readings above zero');
  });

  it.each([0, -3.5, Number.NaN, Number.POSITIVE_INFINITY])('refuses the threshold %s', (threshold) => {
    expect(() => modifiedZFlag([1, 2, 3, 4, 5, 6, 7], { threshold })).toThrow(
      'modifiedZFlag requires a threshold above zero',
    );
  });
});

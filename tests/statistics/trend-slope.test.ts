import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { trendSlope } from '../../src/statistics/trend-slope';
import { badFractions, badReadings, saysRule } from './bad-readings';

describe('trendSlope', () => {
  it('reads 1 % longer each time as a slope of ln 1.01, and its change over the run', () => {
    const trend = trendSlope(Array.from({ length: 30 }, (_, i) => 2 * 1.01 ** i));
    expect(trend).toMatchObject({ tested: true, direction: 'rising' });
    expect(trend.tested && trend.slope).toBeCloseTo(Math.log(1.01), 12);
    expect(trend.tested && trend.changeOverRun).toBeCloseTo(1.01 ** 29 - 1, 10);
  });

  it('calls learning falling and plain scatter not shown', () => {
    expect(trendSlope([10, 9.2, 8.8, 8.1, 7.9, 7.2, 7])).toMatchObject({ direction: 'falling' });
    expect(trendSlope([10, 9.6, 10.3, 9.8, 10.1, 9.9, 10.2])).toMatchObject({ direction: 'not-shown' });
  });

  it('takes a year of readings, 300,000, as calmly as thirty', () => {
    const trend = trendSlope(
      Array.from({ length: 300_000 }, (_, i) => Math.exp(1e-6 * i) * (1 + (i % 2) / 100)),
    );
    expect(trend.tested && trend.slope).toBeCloseTo(1e-6, 12);
  });

  it('turns round when time does', () => {
    const times = fc.array(fc.double({ min: 0.1, max: 10, noNaN: true }), { minLength: 5, maxLength: 30 });
    fc.assert(
      fc.property(times, (readings) => {
        const forward = trendSlope(readings);
        const backward = trendSlope([...readings].reverse());
        if (!forward.tested || !backward.tested) return;
        expect(backward.slope).toBeCloseTo(-forward.slope, 9);
        expect(backward.lower).toBeCloseTo(-forward.upper, 9);
      }),
    );
  });

  it('makes no test below five readings, nor when none differs', () => {
    expect(trendSlope([4, 3, 2, 1])).toEqual({ tested: false, reason: 'too-few-readings' });
    expect(trendSlope([4])).toEqual({ tested: false, reason: 'too-few-readings' });
    expect(trendSlope([4, 4, 4, 4, 4])).toEqual({ tested: false, reason: 'no-spread' });
  });

  it.each(badReadings)('refuses readings with %s', (_, readings) => {
    expect(() => trendSlope(readings)).toThrow(saysRule('trendSlope'));
  });

  it('refuses a time of zero', () => {
    expect(() => trendSlope([3, 2, 1, 0, 1])).toThrow('trendSlope requires readings above zero');
  });

  it.each(badFractions)('refuses the confidence %s', (confidence) => {
    expect(() => trendSlope([5, 4, 3, 2, 1], confidence)).toThrow(saysRule('trendSlope'));
  });
});

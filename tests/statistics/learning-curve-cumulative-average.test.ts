import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { learningCurveCumulativeAverage } from '../../src/statistics/learning-curve-cumulative-average';
import { learningCurveUnit } from '../../src/statistics/learning-curve-unit';
import { saysRule } from './bad-readings';

describe('learningCurveCumulativeAverage', () => {
  it('has unit times that add up to its totals', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.55, max: 1, noNaN: true }),
        fc.integer({ min: 1, max: 200 }),
        (rate, n) => {
          let sum = 0;
          for (let unit = 1; unit <= n; unit += 1) {
            sum += learningCurveCumulativeAverage(30, rate, unit).unitTime;
          }
          expect(sum).toBeCloseTo(learningCurveCumulativeAverage(30, rate, n).total, 7);
        },
      ),
    );
  });

  it('promises less for the average than the unit form does for the unit: the same rate, other figures', () => {
    const { average, unitTime } = learningCurveCumulativeAverage(100, 0.8, 16);
    expect(average).toBeCloseTo(learningCurveUnit(100, 0.8, 16), 12);
    expect(unitTime).toBeLessThan(average);
  });

  it.each([
    [0, 0.8, 2],
    [-1, 0.8, 2],
    [Number.NaN, 0.8, 2],
    [1e308, 0.8, 2],
    [5, 0, 2],
    [5, 1.2, 2],
    [5, 0.8, 0],
    [5, 0.8, 1.5],
    [5, 0.8, Number.POSITIVE_INFINITY],
  ])('refuses first time %s, rate %s, %s units', (first, rate, units) => {
    expect(() => learningCurveCumulativeAverage(first, rate, units)).toThrow(
      saysRule('learningCurveCumulativeAverage'),
    );
  });
});

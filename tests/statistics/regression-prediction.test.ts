import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { regressionPrediction } from '../../src/statistics/regression-prediction';
import { simpleRegression } from '../../src/statistics/simple-regression';
import { badFractions, saysRule } from './bad-readings';

const { fit } = simpleRegression([1, 2, 3, 4, 5], [2.1, 3.9, 6.2, 7.8, 10.1]);

describe('regressionPrediction', () => {
  it('is narrowest at the mean size, where the half-width is t·s/√n', () => {
    const centre = regressionPrediction(fit, [3]);
    // t(0.975) on 3 degrees of freedom is 3.1824, as the table prints.
    expect(centre.meanHalfWidth).toBeCloseTo((3.1824 * fit.residualDeviation) / Math.sqrt(5), 4);
    expect(regressionPrediction(fit, [2]).meanHalfWidth).toBeGreaterThan(centre.meanHalfWidth);
    expect(regressionPrediction(fit, [4]).meanHalfWidth).toBeGreaterThan(centre.meanHalfWidth);
  });

  it('narrows from one part towards the mean as the lot grows, and never below it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100_000 }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (parts, x) => {
          const lot = regressionPrediction(fit, [x], { parts });
          const larger = regressionPrediction(fit, [x], { parts: parts + 1 });
          expect(larger.partsHalfWidth).toBeLessThanOrEqual(lot.partsHalfWidth);
          expect(lot.partsHalfWidth).toBeGreaterThan(lot.meanHalfWidth);
        },
      ),
    );
  });

  it('widens with the confidence', () => {
    const narrow = regressionPrediction(fit, [4], { confidence: 0.8 });
    expect(regressionPrediction(fit, [4], { confidence: 0.99 }).meanHalfWidth).toBeGreaterThan(
      narrow.meanHalfWidth,
    );
  });

  it.each([0, -1, 2.5, Number.NaN, Number.POSITIVE_INFINITY])('refuses %s parts', (parts) => {
    expect(() => regressionPrediction(fit, [3], { parts })).toThrow(saysRule('regressionPrediction'));
  });

  it.each([[[]], [[1, 2]], [[Number.NaN]], [[Number.POSITIVE_INFINITY]], [[1e308]]])(
    'refuses the drivers %o',
    (drivers) => {
      expect(() => regressionPrediction(fit, drivers)).toThrow(saysRule('regressionPrediction'));
    },
  );

  it.each(badFractions)('refuses the confidence %s', (confidence) => {
    expect(() => regressionPrediction(fit, [3], { confidence })).toThrow(saysRule('regressionPrediction'));
  });
});

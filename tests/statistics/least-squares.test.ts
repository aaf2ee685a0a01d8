import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../src/statistics/least-squares';
import { badReadings, saysRule } from './bad-readings';

const points = fc.array(
  fc.tuple(
    fc.integer({ min: -100, max: 100 }),
    fc.integer({ min: -100, max: 100 }),
    fc.integer({ min: -100, max: 100 }),
  ),
  { minLength: 5, maxLength: 30 },
);

/** The fit of random points, or nothing when they happen to lie so that there is none. */
function fitOf(sample: readonly (readonly [number, number, number])[]) {
  const columns = [sample.map(([x]) => x), sample.map(([, z]) => z)];
  try {
    return leastSquares(
      columns,
      sample.map(([, , y]) => y),
    );
  } catch {
    return undefined;
  }
}

describe('leastSquares', () => {
  it('finds a plane that is there: y = 3 + 2x − z without noise', () => {
    const x = [0, 1, 2, 3, 4, 0, 2];
    const z = [1, 0, 2, 5, 1, 3, 3];
    const fit = leastSquares(
      [x, z],
      x.map((value, i) => 3 + 2 * value - z[i]!),
    );
    for (const [i, truth] of [3, 2, -1].entries()) expect(fit.coefficients[i]).toBeCloseTo(truth, 12);
    expect(fit.residualDeviation).toBeLessThan(1e-13);
    expect(fit.rSquared).toBeCloseTo(1, 14);
  });

  it('leaves residuals that add up to nothing, alone and times every driver', () => {
    fc.assert(
      fc.property(points, (sample) => {
        const fit = fitOf(sample);
        if (!fit) return;
        const dot = (weights: readonly number[]) =>
          fit.residuals.reduce((sum, r, i) => sum + r * weights[i]!, 0);
        expect(dot(sample.map(() => 1))).toBeCloseTo(0, 7);
        expect(dot(sample.map(([x]) => x))).toBeCloseTo(0, 5);
        expect(dot(sample.map(([, z]) => z))).toBeCloseTo(0, 5);
      }),
    );
  });

  it('has leverages that add up to the number of coefficients', () => {
    fc.assert(
      fc.property(points, (sample) => {
        const fit = fitOf(sample);
        if (!fit) return;
        expect(fit.leverages.reduce((sum, leverage) => sum + leverage, 0)).toBeCloseTo(3, 7);
      }),
    );
  });

  it('does not depend on the order of the observations', () => {
    fc.assert(
      fc.property(points, (sample) => {
        const [one, other] = [fitOf(sample), fitOf([...sample].reverse())];
        if (!one || !other) return;
        for (const [i, coefficient] of one.coefficients.entries()) {
          expect(other.coefficients[i]).toBeCloseTo(coefficient, 6);
        }
      }),
    );
  });

  it.each([
    ['no driver', [], [1, 2, 3]],
    ['a driver shorter than the responses', [[1, 2]], [1, 2, 3]],
    ['as many coefficients as observations', [[1, 2]], [1, 2]],
    ['a driver that never varies', [[4, 4, 4, 4]], [1, 2, 3, 4]],
    [
      'a driver that is twice another',
      [
        [1, 2, 3, 4, 5],
        [2, 4, 6, 8, 10],
      ],
      [1, 2, 3, 5, 8],
    ],
    ['responses that are all equal', [[1, 2, 3, 4]], [5, 5, 5, 5]],
    ['nothing', [[]], []],
  ])('refuses %s', (_, drivers, responses) => {
    expect(() => leastSquares(drivers, responses)).toThrow(saysRule('leastSquares'));
  });

  it.each(badReadings)('refuses responses, and a driver, with %s', (_, bad) => {
    const sound = bad.map((__, i) => i * i);
    expect(() => leastSquares([sound], bad)).toThrow(saysRule('leastSquares'));
    expect(() => leastSquares([bad], sound)).toThrow(saysRule('leastSquares'));
  });

  it('refuses a point with another number of drivers, or a bad one', () => {
    const fit = leastSquares([[1, 2, 3, 4]], [1, 3, 2, 5]);
    expect(() => fit.leverageAt([1, 2])).toThrow(saysRule('leastSquares'));
    expect(() => fit.leverageAt([])).toThrow(RangeError);
    expect(() => fit.leverageAt([Number.NaN])).toThrow(RangeError);
  });
});

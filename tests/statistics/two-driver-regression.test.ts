import { describe, expect, it } from 'vitest';
import { simpleRegression } from '../../src/statistics/simple-regression';
import { twoDriverRegression } from '../../src/statistics/two-driver-regression';
import { badFractions, badReadings, saysRule } from './bad-readings';

const first = [0, 1, 0, 1, 2, 2];
const second = [0, 0, 1, 1, 0, 1];
const minutes = [1, 3.1, 2, 3.9, 5, 6.1];

describe('twoDriverRegression', () => {
  it('gives each driver of a crossed plan the slope that it has alone', () => {
    const plane = twoDriverRegression(first, second, minutes);
    expect(plane.slopes[0]).toBeCloseTo(simpleRegression(first, minutes).slope, 12);
    expect(plane.slopes[1]).toBeCloseTo(simpleRegression(second, minutes).slope, 12);
    expect(plane.degreesOfFreedom).toBe(3);
  });

  it('reaches t(0.975) standard errors to each side of each coefficient: 3.1824 on 3 degrees, as the table prints', () => {
    const uneven = twoDriverRegression([0, 1, 0, 1, 2, 5], second, minutes);
    expect(uneven.slopeHalfWidths[0] / uneven.slopeErrors[0]).toBeCloseTo(3.1824, 4);
    expect(uneven.slopeHalfWidths[1] / uneven.slopeErrors[1]).toBeCloseTo(3.1824, 4);
    expect(uneven.interceptHalfWidth / uneven.interceptError).toBeCloseTo(3.1824, 4);
  });

  it('swaps its slopes when the drivers change places', () => {
    const one = twoDriverRegression(first, second, minutes);
    const other = twoDriverRegression(second, first, minutes);
    expect(other.slopes[0]).toBeCloseTo(one.slopes[1], 12);
    expect(other.slopeErrors[1]).toBeCloseTo(one.slopeErrors[0], 12);
    expect(other.intercept).toBeCloseTo(one.intercept, 12);
  });

  it.each([
    ['three points', [1, 2, 3], [1, 0, 1], [1, 2, 3]],
    ['a second driver that follows the first', [1, 2, 3, 4, 5], [3, 5, 7, 9, 11], [1, 2, 4, 3, 5]],
    ['a driver that never varies', [1, 1, 1, 1, 1], [3, 5, 7, 9, 12], [1, 2, 4, 3, 5]],
    ['times that are all equal', [1, 2, 3, 4, 5], [3, 5, 7, 9, 12], [1, 1, 1, 1, 1]],
    ['lists of several lengths', [1, 2, 3, 4], [3, 5, 7, 9, 12], [1, 2, 4, 3, 5]],
  ])('refuses %s', (_, x, z, y) => {
    expect(() => twoDriverRegression(x, z, y)).toThrow(saysRule('twoDriverRegression'));
  });

  it.each(badReadings)('refuses a second driver with %s', (_, bad) => {
    const sound = bad.map((__, i) => i % 3);
    expect(() =>
      twoDriverRegression(
        sound,
        bad,
        bad.map((__, i) => i),
      ),
    ).toThrow(saysRule('twoDriverRegression'));
  });

  it.each(badFractions)('refuses the confidence %s', (confidence) => {
    expect(() => twoDriverRegression(first, second, minutes, { confidence })).toThrow(
      saysRule('twoDriverRegression'),
    );
  });
});

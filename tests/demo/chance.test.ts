import { describe, expect, it } from 'vitest';
import { lognormalTime } from '../../src/demo/lognormal-time';
import { normalDeviates } from '../../src/demo/normal-deviates';
import { observedMean } from '../../src/statistics/observed-mean';
import { sampleStandardDeviation } from '../../src/statistics/sample-standard-deviation';
import { seededRandom } from '../../src/statistics/seeded-random';

function source(...numbers: number[]): () => number {
  return () => numbers.shift()!;
}

describe('normalDeviates', () => {
  it('turns two uniform numbers into one deviate', () => {
    // By hand: a = e^(−1/2) makes the radius √1; b = 1/2 and 1/6 turn it by 180° and 60°.
    const a = Math.exp(-0.5);
    const deviate = normalDeviates(source(a, 1 / 2, a, 1 / 6));
    expect(deviate()).toBeCloseTo(-1, 12);
    expect(deviate()).toBeCloseTo(0.5, 12);
  });

  it('has mean 0 and deviation 1 in the long run', () => {
    const deviate = normalDeviates(seededRandom(1));
    const many = Array.from({ length: 20_000 }, deviate);
    // Four standard errors: 4/√20000 and 4/√40000.
    expect(Math.abs(observedMean(many))).toBeLessThan(0.029);
    expect(Math.abs(sampleStandardDeviation(many) - 1)).toBeLessThan(0.02);
  });
});

describe('lognormalTime', () => {
  it('lies below the mean at the middle of its distribution', () => {
    // Median of a lognormal: mean/√(1 + cv²) = 2/√1.25 for a cv of 0.5.
    expect(lognormalTime(0, { mean: 2, cv: 0.5 })).toBeCloseTo(2 / Math.sqrt(1.25), 12);
  });

  it('keeps the mean and the coefficient of variation it is given', () => {
    const deviate = normalDeviates(seededRandom(7));
    const many = Array.from({ length: 50_000 }, () => lognormalTime(deviate(), { mean: 2, cv: 0.25 }));
    // Standard errors: 0.5/√50000 = 0.0022 on the mean; the cv within 2 %.
    expect(Math.abs(observedMean(many) - 2)).toBeLessThan(0.009);
    expect(Math.abs(sampleStandardDeviation(many) / observedMean(many) - 0.25)).toBeLessThan(0.005);
  });

  it('is the mean itself when nothing varies', () => {
    expect(lognormalTime(3, { mean: 2, cv: 0 })).toBe(2);
  });
});

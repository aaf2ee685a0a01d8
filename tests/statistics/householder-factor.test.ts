import { describe, expect, it } from 'vitest';
import { householderFactor } from '../../src/statistics/householder-factor';

function factorOf(columns: readonly (readonly number[])[]) {
  const factor = householderFactor(columns);
  if (factor === 'dependent') throw new Error('expected independent columns');
  return factor;
}

describe('householderFactor', () => {
  it('solves a square system exactly: 2x + y = 5, x + 3y = 10', () => {
    const solution = factorOf([
      [2, 1],
      [1, 3],
    ]).solve([5, 10]);
    expect(solution[0]).toBeCloseTo(1, 14);
    expect(solution[1]).toBeCloseTo(3, 14);
  });

  it('comes nearest to a target out of reach: the foot of the perpendicular', () => {
    // Column (1, 1, 1) against (1, 2, 6): the mean, 3.
    expect(factorOf([[1, 1, 1]]).solve([1, 2, 6])[0]).toBeCloseTo(3, 14);
  });

  it('has the roots of the diagonal of (AᵀA)⁻¹: by hand for AᵀA = (2 1; 1 2)', () => {
    const { inverseRowNorms, whiten } = factorOf([
      [1, 1, 0],
      [0, 1, 1],
    ]);
    // The inverse is (2 −1; −1 2)/3.
    expect(inverseRowNorms[0]).toBeCloseTo(Math.sqrt(2 / 3), 14);
    expect(inverseRowNorms[1]).toBeCloseTo(Math.sqrt(2 / 3), 14);
    const w = whiten([1, 1]);
    // vᵀ(AᵀA)⁻¹v for v = (1, 1) is (2 − 1 − 1 + 2)/3.
    expect(w[0]! ** 2 + w[1]! ** 2).toBeCloseTo(2 / 3, 14);
  });

  it('does not mind columns of very different size', () => {
    const solution = factorOf([
      [1e120, 1e120, 0],
      [0, 1e-120, 1e-120],
    ]).solve([1, 2, 1]);
    expect(solution[0]! * 1e120).toBeCloseTo(1, 12);
    expect(solution[1]! / 1e120).toBeCloseTo(1, 12);
  });

  it.each([
    ['a zero column', [[0, 0, 0]]],
    [
      'a column twice',
      [
        [1, 2, 3],
        [1, 2, 3],
      ],
    ],
    [
      'a column that is the sum of two others',
      [
        [1, 2, 3],
        [2, 0, 1],
        [3, 2, 4],
      ],
    ],
  ])('calls %s dependent instead of dividing by nothing', (_, columns) => {
    expect(householderFactor(columns)).toBe('dependent');
  });
});

import { describe, expect, it } from 'vitest';
import { gaussLegendre } from '../../src/statistics/gauss-legendre';
import { saysRule } from './bad-readings';

describe('gaussLegendre', () => {
  it('has the nodes ±1/√3 for two points and 0, ±√(3/5) for three, by hand', () => {
    expect(gaussLegendre(2).map(({ node }) => node)[0]).toBeCloseTo(Math.sqrt(1 / 3), 15);
    const three = gaussLegendre(3);
    expect(three[0]!.node).toBeCloseTo(Math.sqrt(3 / 5), 15);
    expect(three[1]!.node).toBeCloseTo(0, 15);
    expect(three[1]!.weight).toBeCloseTo(8 / 9, 15);
  });

  it.each([1, 2, 5, 16, 40, 200])('with %i nodes integrates every power it should exactly', (count) => {
    const nodes = gaussLegendre(count);
    for (const power of [0, 1, 2, 3, 2 * count - 2, 2 * count - 1].filter((k) => k <= 2 * count - 1)) {
      const sum = nodes.reduce((area, { node, weight }) => area + weight * node ** power, 0);
      // ∫ x^k from −1 to 1 is 2/(k + 1) for even k, 0 for odd.
      expect(sum).toBeCloseTo(power % 2 === 0 ? 2 / (power + 1) : 0, 12);
    }
  });

  it.each([0, -1, 2.5, 201, Number.NaN])('refuses %s nodes', (count) => {
    expect(() => gaussLegendre(count)).toThrow(saysRule('gaussLegendre'));
  });
});

import { describe, expect, it } from 'vitest';
import { controlChartConstants } from '../../src/statistics/control-chart-constants';
import { saysRule } from './bad-readings';

describe('controlChartConstants', () => {
  it('are the closed forms for two readings: d2 = 2/√π, d3 = √(2 − 4/π), c4 = √(2/π)', () => {
    const { d2, d3, c4 } = controlChartConstants(2);
    expect(d2).toBeCloseTo(2 / Math.sqrt(Math.PI), 13);
    expect(d3).toBeCloseTo(Math.sqrt(2 - 4 / Math.PI), 12);
    expect(c4).toBeCloseTo(Math.sqrt(2 / Math.PI), 14);
  });

  it('has d2 = 3/√π for three readings, the closed form', () => {
    expect(controlChartConstants(3).d2).toBeCloseTo(3 / Math.sqrt(Math.PI), 13);
  });

  it('grows in d2 and c4 and shrinks in every limit as subgroups grow', () => {
    for (let n = 3; n <= 50; n += 1) {
      const smaller = controlChartConstants(n - 1);
      const larger = controlChartConstants(n);
      expect(larger.d2).toBeGreaterThan(smaller.d2);
      expect(larger.c4).toBeGreaterThan(smaller.c4);
      expect(larger.A2).toBeLessThan(smaller.A2);
      expect(larger.A3).toBeLessThan(smaller.A3);
      expect(larger.D4).toBeLessThan(smaller.D4);
      expect(larger.B4).toBeLessThan(smaller.B4);
    }
  });

  it('has no lower limit of ranges up to six readings, and one from seven, as the tables print', () => {
    expect(controlChartConstants(6).D3).toBe(0);
    expect(controlChartConstants(7).D3).toBeGreaterThan(0);
    expect(controlChartConstants(5).B3).toBe(0);
    expect(controlChartConstants(6).B3).toBeGreaterThan(0);
  });

  it.each([0, 1, 2.5, 51, -3, Number.NaN, 1e308])('refuses subgroups of %s', (n) => {
    expect(() => controlChartConstants(n)).toThrow(saysRule('controlChartConstants'));
  });
});

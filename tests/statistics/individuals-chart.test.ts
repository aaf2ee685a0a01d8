import { describe, expect, it } from 'vitest';
import { individualsChart } from '../../src/statistics/individuals-chart';
import { badReadings, saysRule } from './bad-readings';

/** NIST/SEMATECH e-Handbook 6.3.2.2, flow rate of ten batches. */
const flow = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

describe('individualsChart', () => {
  it('uses computed constants by default, which differ from the printed 1.128 in the third place', () => {
    const { upper, lower } = individualsChart(flow);
    // 50.81 ± 3·1.87778/1.1283792, with d2 = 2/√π.
    expect(upper).toBeCloseTo(50.81 + (3 * (16.9 / 9) * Math.sqrt(Math.PI)) / 2, 10);
    expect(lower).toBeCloseTo(50.81 - (3 * (16.9 / 9) * Math.sqrt(Math.PI)) / 2, 10);
  });

  it('freezes the limits at the baseline: later values do not move them', () => {
    const frozen = individualsChart(flow);
    const later = individualsChart([...flow, 90, 10, 90], { baseline: 10 });
    expect(later).toMatchObject({ centre: frozen.centre, upper: frozen.upper, standing: frozen.standing });
    expect(later.movingRanges).toHaveLength(12);
  });

  it.each([
    [9, 'too-few'],
    [10, 'provisional'],
    [19, 'provisional'],
    [20, 'firm'],
  ])('says that limits from %i days are %s', (days, standing) => {
    const values = Array.from({ length: days }, (_, i) => i % 3);
    expect(individualsChart(values).standing).toBe(standing);
  });

  it.each([...badReadings, ['one alone', [1]] as const])('refuses values with %s', (_, values) => {
    expect(() => individualsChart(values)).toThrow(saysRule('individualsChart'));
  });

  it.each([1, 0, 11, 2.5, Number.NaN])('refuses the baseline %s of ten values', (baseline) => {
    expect(() => individualsChart(flow, { baseline })).toThrow(saysRule('individualsChart'));
  });

  it.each([{ d2: 0 }, { D4: 0 }, { d2: Number.NaN }, { D4: Number.POSITIVE_INFINITY }])(
    'refuses the constants %o',
    (constants) => {
      expect(() => individualsChart(flow, constants)).toThrow(
        'individualsChart requires a d2 and a D4 from 0.001 to 1000',
      );
    },
  );
});

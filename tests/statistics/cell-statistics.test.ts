import { describe, expect, it } from 'vitest';
import { expectedMaximum } from '../../src/statistics/expected-maximum';
import { leadTimeTerms } from '../../src/statistics/lead-time-terms';
import { lineBalance } from '../../src/statistics/line-balance';
import { lotMakespan } from '../../src/statistics/lot-makespan';
import { normalDensity } from '../../src/statistics/normal-density';
import { pairedComparison } from '../../src/statistics/paired-comparison';
import { partsInside } from '../../src/statistics/parts-inside';
import { randomServicing } from '../../src/statistics/random-servicing';
import { servicingCost } from '../../src/statistics/servicing-cost';
import { synchronousServicing } from '../../src/statistics/synchronous-servicing';
import { taktTime } from '../../src/statistics/takt-time';
import { welchComparison } from '../../src/statistics/welch-comparison';

describe('the expected maximum of hand work and a machine', () => {
  it('is what adding the maximum up over a fine grid of the normal curve gives', () => {
    for (const [mean, deviation, fixed] of [
      [1.2, 0.1, 1.2],
      [1, 0.3, 1.4],
      [2, 0.05, 1],
    ] as const) {
      let sum = 0;
      const step = 1e-4;
      for (let z = -9; z < 9; z += step) {
        sum += step * normalDensity(z + step / 2) * Math.max(fixed, mean + deviation * (z + step / 2));
      }
      expect(expectedMaximum({ mean, deviation, fixed })).toBeCloseTo(sum, 6);
    }
  });

  it('is never below the larger of the two', () => {
    expect(expectedMaximum({ mean: 1, deviation: 0.2, fixed: 5 })).toBeGreaterThanOrEqual(5);
    expect(expectedMaximum({ mean: 5, deviation: 0.2, fixed: 1 })).toBeGreaterThanOrEqual(5);
  });
});

describe('a paired comparison', () => {
  const before = [10, 20, 30, 40, 50];
  const after = [11, 22, 31, 42, 51];

  it('sees a difference that the spread between the pairs hides from an unpaired one', () => {
    const paired = pairedComparison(before, after);
    // By hand: differences 1 2 1 2 1, mean 1.4, s 0.5477, t(0.975, 4) 2.7764: 1.4 ± 0.68.
    expect(paired.difference).toBeCloseTo(1.4, 12);
    expect(paired.lower).toBeCloseTo(0.7199, 4);
    expect(paired.upper).toBeCloseTo(2.0801, 4);
    expect(welchComparison(after, before).lower).toBeLessThan(0);
  });
});

describe('the lead time of a cell in three terms', () => {
  it('is 28.8 minutes for lots of 20 and trolleys of 8, and 12.0 for 5 and 4', () => {
    const racks = leadTimeTerms({
      interval: 1.622,
      flowTime: 2.8,
      arrivalLot: 20,
      refillAt: 3,
      trolley: 8,
    });
    expect(racks.total).toBeCloseTo(28.75, 2);
    // A trolley of 4 is exchanged twice as often, which costs each door 0.45/4 − 0.45/8 of a minute.
    const interval = 1.622 + 0.45 / 8;
    const small = leadTimeTerms({ interval, flowTime: 2.8, arrivalLot: 5, refillAt: 2, trolley: 4 });
    expect(small.total).toBeCloseTo(12.03, 2);
  });

  it('is the flow alone when parts come and go one by one, just in time', () => {
    expect(leadTimeTerms({ interval: 2, flowTime: 3, arrivalLot: 1, refillAt: 0, trolley: 1 }).total).toBe(3);
  });
});

describe('input that makes no sense', () => {
  it.each([
    ['expectedMaximum', () => expectedMaximum({ mean: 1, deviation: -1, fixed: 1 })],
    ['pairedComparison', () => pairedComparison([1, 2], [1, 2, 3])],
    ['synchronousServicing', () => synchronousServicing({ together: 1, alone: 1, machine: 1, machines: 0 })],
    [
      'servicingCost',
      () =>
        servicingCost({ together: 1, alone: 1, machine: 1, machines: 1, operatorRate: -1, machineRate: 1 }),
    ],
    ['randomServicing', () => randomServicing(3, 1.1)],
    ['taktTime', () => taktTime(100, 0)],
    ['lineBalance', () => lineBalance([0, 0], 1)],
    ['lineBalance', () => lineBalance([1], 0)],
    ['lotMakespan', () => lotMakespan(0, [1])],
    ['lotMakespan', () => lotMakespan(1, [])],
    [
      'leadTimeTerms',
      () => leadTimeTerms({ interval: 1, flowTime: 1, arrivalLot: 0, refillAt: 0, trolley: 1 }),
    ],
    ['partsInside', () => partsInside(Number.NaN, 1)],
  ])('is refused by %s with a sentence that names it', (name, call) => {
    expect(call).toThrow(new RegExp(`^${name} requires `));
  });

  it('is not a lot of one, which takes the sum of its stages either way', () => {
    expect(lotMakespan(1, [2, 3])).toEqual({
      batchFirst: 5,
      batchLast: 5,
      onePieceFirst: 5,
      onePieceLast: 5,
    });
  });

  it('is not a takt shorter than the longest station: the efficiency by takt then says so by passing 1', () => {
    expect(lineBalance([4, 6], 3).efficiencyByTakt).toBeGreaterThan(1);
  });
});

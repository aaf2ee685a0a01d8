import { describe, expect, it } from 'vitest';
import { internalOccasionalEffect } from '../../src/statistics/internal-occasional-effect';
import { meanInterval } from '../../src/statistics/mean-interval';
import { normalQuantile } from '../../src/statistics/normal-quantile';
import { operatorDayInterval } from '../../src/statistics/operator-day-interval';
import { recommendedCycles } from '../../src/statistics/recommended-cycles';
import { requiredReadingsIterated } from '../../src/statistics/required-readings-iterated';
import { requiredReadingsNormal } from '../../src/statistics/required-readings-normal';
import { seededRandom } from '../../src/statistics/seeded-random';
import { serialMeanInterval } from '../../src/statistics/serial-mean-interval';
import { standardTime } from '../../src/statistics/standard-time';
import { studentQuantile } from '../../src/statistics/student-quantile';
import { totalUncertainty } from '../../src/statistics/total-uncertainty';
import { varianceOfMean } from '../../src/statistics/variance-of-mean';
import { wholeReadings } from '../../src/statistics/whole-readings';

// What the comments of src/statistics claim about intervals, tried on invented readings whose truth is known.

const truth = 10;
const repeats = 2000;

/** Share of repeats in which an interval holds the true mean. */
function coverage(
  make: (deviate: () => number) => { mean: number; halfWidth: number },
  seed: number,
): number {
  const random = seededRandom(seed);
  const deviate = () => normalQuantile(Math.min(Math.max(random(), 1e-9), 1 - 1e-9));
  let held = 0;
  for (let i = 0; i < repeats; i += 1) {
    const { mean, halfWidth } = make(deviate);
    if (Math.abs(mean - truth) <= halfWidth) held += 1;
  }
  return held / repeats;
}

/** A run in which each reading resembles the one before: a first-order process of deviation 1. */
function resemblingRun(deviate: () => number, correlation: number, n: number): number[] {
  const readings: number[] = [];
  let off = deviate();
  for (let i = 0; i < n; i += 1) {
    readings.push(truth + off);
    off = correlation * off + Math.sqrt(1 - correlation ** 2) * deviate();
  }
  return readings;
}

describe('a nominal 95 % interval', () => {
  it('of 60 readings that resemble their neighbours by 0.5 holds the truth in 91 to 97 % of runs', () => {
    const share = coverage((deviate) => serialMeanInterval(resemblingRun(deviate, 0.5, 60), 0.95), 11);
    expect(share).toBeGreaterThan(0.91);
    expect(share).toBeLessThan(0.97);
  });

  it('of the same readings taken for independent holds it in fewer than 80 %', () => {
    expect(coverage((deviate) => meanInterval(resemblingRun(deviate, 0.5, 60), 0.95), 11)).toBeLessThan(0.8);
  });

  it('loses nothing where readings are independent', () => {
    const share = coverage((deviate) => serialMeanInterval(resemblingRun(deviate, 0, 30), 0.95), 12);
    expect(share).toBeGreaterThan(0.93);
    expect(share).toBeLessThan(0.98);
  });

  const days = (deviate: () => number, counts: readonly number[], between: number) =>
    counts.map((count) => {
      const day = truth + between * deviate();
      return Array.from({ length: count }, () => day + deviate());
    });

  it.each([
    ['four equally long operator-days that differ as much as readings do', [10, 10, 10, 10], 1],
    ['three operator-days of 5, 10 and 20 readings', [5, 10, 20], 1],
    ['five operator-days that do not differ at all', [6, 6, 6, 6, 6], 0],
  ])('over %s holds it in at least 93 %%', (_, counts, between) => {
    const share = coverage((deviate) => operatorDayInterval(days(deviate, counts, between), 0.95), 13);
    expect(share).toBeGreaterThan(0.93);
  });

  it('that forgets the operator-days holds it in fewer than half of the cases', () => {
    const share = coverage((deviate) => meanInterval(days(deviate, [20, 20], 1).flat(), 0.95), 14);
    expect(share).toBeLessThan(0.5);
  });
});

describe('precision that knows about operators and days', () => {
  it('says that thirty cycles of one morning, ±2.5 % of themselves, are ±14 % of the job', () => {
    // Spreads between and within operator-days of 0.083 min each on a cycle of 1.2 min.
    const spread = 0.083 ** 2;
    const oneMorning = varianceOfMean({ within: spread, between: spread, groups: 1, n: 30 });
    expect((1.96 * Math.sqrt(oneMorning)) / 1.2).toBeCloseTo(0.138, 3);
    expect((1.96 * Math.sqrt(spread / 30)) / 1.2).toBeCloseTo(0.025, 3);
  });

  it('says when more cycles cannot help: from half of the rating uncertainty downwards, not at it', () => {
    const helped = (sampling: number) =>
      totalUncertainty({ sampling, rating: 0.05, frequency: 0.01 }).moreReadingsCannotHelp;
    expect(helped(0.026)).toBe(false);
    expect(helped(0.025)).toBe(false);
    expect(helped(0.024)).toBe(true);
  });
});

describe('required readings', () => {
  it('by t settle where putting the answer back in swings between 6 and 7 for ever', () => {
    const needed = (n: number) => Math.ceil(studentQuantile(0.975, n - 1) ** 2);
    expect([needed(6), needed(7)]).toEqual([7, 6]);
    const asked = { mean: 1, standardDeviation: 0.1, precision: 0.1, confidence: 0.95 };
    expect(requiredReadingsIterated(asked)).toBe(7);
  });

  it('of readings that are all equal are none more by formula, and two at least where t is asked', () => {
    const asked = { mean: 1, standardDeviation: 0, precision: 0.05, confidence: 0.95 };
    expect(requiredReadingsNormal(asked)).toEqual({ raw: 0, readings: 0 });
    expect(requiredReadingsIterated(asked)).toBe(2);
  });

  it('are the same whichever way the arithmetic rounded, and rounded up otherwise', () => {
    // (1.65·1/(0.05·3))² is 120.99999999999996 in doubles.
    expect(((1.65 * 1) / (0.05 * 3)) ** 2).toBeLessThan(121);
    const raws = [120.99999999999996, 121, 121.00000000000003, 121.0000001, 426.0096, 0, 0.2];
    expect(raws.map(wholeReadings)).toEqual([121, 121, 121, 122, 427, 0, 1]);
  });

  it('recommended between two rows of the printed table are those of the shorter cycle', () => {
    expect([0.05, 0.2, 0.99, 1.5, 2, 2.01, 5, 39.9, 40].map(recommendedCycles)).toEqual([
      200, 200, 40, 30, 20, 15, 15, 5, 3,
    ]);
  });
});

describe('standard time beside a machine', () => {
  const parts = {
    external: 1,
    occasional: 0,
    allowance: 0.15,
    machineAllowance: 0,
    basis: 'normal_time',
  } as const;

  it('is governed by the longer branch with its allowance, not by the longer normal time', () => {
    // 2.7 of hand work rests to 3.105 and so passes the machine's 3.
    const answer = standardTime({ ...parts, internal: 2.7, machine: 3 });
    expect(answer.governing).toBe('operator');
    expect(answer.normalTime).toBe(4);
    expect(answer.standardTime).toBeCloseTo(1.15 + 3.105, 12);
  });

  it('has nothing that governs without a machine, and the machine at a tie', () => {
    expect(standardTime({ ...parts, internal: 2, machine: 0 }).governing).toBeNull();
    expect(standardTime({ ...parts, allowance: 0, internal: 3, machine: 3 }).governing).toBe('machine');
  });

  it('allows on the shift basis by dividing, the machine by its own allowance', () => {
    const answer = standardTime({
      ...parts,
      basis: 'shift',
      allowance: 0.2,
      machineAllowance: 0.1,
      internal: 1,
      machine: 3,
    });
    // 1/(1 − 0.2) + 3/(1 − 0.1), worked by hand.
    expect(answer.standardTime).toBeCloseTo(1.25 + 10 / 3, 12);
  });

  it('takes occasional work inside the machine time for nothing while there is slack', () => {
    const work = { internal: 1, machine: 2, perUnit: 0.1 };
    expect(internalOccasionalEffect({ ...work, occasional: 1 })).toBe(0);
    expect(internalOccasionalEffect({ ...work, occasional: 3 })).toBeCloseTo(0.2, 12);
  });
});

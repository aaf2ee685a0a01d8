import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { controlChartConstants } from '../../src/statistics/control-chart-constants';
import { grubbsCriticalValue } from '../../src/statistics/grubbs-critical-value';
import { grubbsFlag } from '../../src/statistics/grubbs-flag';
import { halfComparison } from '../../src/statistics/half-comparison';
import { lackOfFit } from '../../src/statistics/lack-of-fit';
import { learningCurveCumulativeAverage } from '../../src/statistics/learning-curve-cumulative-average';
import { learningCurveUnit } from '../../src/statistics/learning-curve-unit';
import { mannWhitney } from '../../src/statistics/mann-whitney';
import { midRanks } from '../../src/statistics/mid-ranks';
import { modifiedZFlag } from '../../src/statistics/modified-z-flag';
import { naturalLimits } from '../../src/statistics/natural-limits';
import { poissonInterval } from '../../src/statistics/poisson-interval';
import { pooledComparison } from '../../src/statistics/pooled-comparison';
import { regressionPrediction } from '../../src/statistics/regression-prediction';
import { runsTest } from '../../src/statistics/runs-test';
import { seededRandom } from '../../src/statistics/seeded-random';
import { simpleRegression } from '../../src/statistics/simple-regression';
import { trendSlope } from '../../src/statistics/trend-slope';
import { twoDriverRegression } from '../../src/statistics/two-driver-regression';
import { twoOneSidedTests } from '../../src/statistics/two-one-sided-tests';
import { welchComparison } from '../../src/statistics/welch-comparison';
import { wilsonInterval } from '../../src/statistics/wilson-interval';

type Numbers = Record<string, number | readonly number[]>;

interface Case {
  readonly args: readonly unknown[];
  readonly out: Numbers;
  /** Below this size a difference is absolute: an interval's end near zero has no relative error. */
  readonly scale?: number;
}

// The tests read the small grid; the variable names a larger one, made as the script beside the grid says.
const grid = process.env.PACEWRIGHT_REFERENCE ?? 'fixtures/reference/comparison-reference.json';
const reference = JSON.parse(readFileSync(grid, 'utf8')) as Record<string, Case[]>;

type Compute = (...args: never[]) => object;
type Level = { confidence: number; parts: number };

const computed: Record<string, Compute> = {
  welchComparison,
  pooledComparison,
  twoOneSidedTests,
  'mannWhitney exact': mannWhitney,
  'mannWhitney normal': mannWhitney,
  midRanks: (values: number[]) => ({ ranks: midRanks(values) }),
  simpleRegression: (x: number[], y: number[], level: Level, at: number[]) => {
    const line = simpleRegression(x, y, level);
    return { ...line, ...regressionPrediction(line.fit, at, level) };
  },
  twoDriverRegression: (x: number[], z: number[], y: number[], level: Level, at: number[]) => {
    const plane = twoDriverRegression(x, z, y, level);
    return { ...plane, ...regressionPrediction(plane.fit, at, level) };
  },
  lackOfFit,
  wilsonInterval,
  poissonInterval,
  grubbsCriticalValue: (n: number, significance: number) => ({
    critical: grubbsCriticalValue(n, significance),
  }),
  outlierFlags: (times: number[]) => ({ ...grubbsFlag(times), ...modifiedZFlag(times) }),
  runsTest,
  trendSlope,
  halfComparison,
  naturalLimits,
  seededRandom: (seed: number, draws: number) => {
    const random = seededRandom(seed);
    let last = 0;
    for (let draw = 0; draw < draws; draw += 1) last = random();
    return { state: Math.round(last * 2147483647) };
  },
  learningCurves: (first: number, rate: number, n: number) => {
    const curve = learningCurveCumulativeAverage(first, rate, n);
    return { ...curve, unit: learningCurveUnit(first, rate, n), last: curve.unitTime };
  },
  controlChartConstants,
};

/**
 * Relative difference allowed. With 10,000 inputs a function the worst were: constants
 * 5e-11 and learning curves 5e-11, both the loss of digits of the reference itself, outlier scores
 * 3e-12, Welch 2.4e-12, all others below 1e-12; ranks and generator exact.
 */
const allowed: Record<string, number> = {
  controlChartConstants: 1e-10,
  learningCurves: 1e-10,
  seededRandom: Number.MIN_VALUE,
  midRanks: Number.MIN_VALUE,
};
const usual = 1e-11;

function worstDifference(ours: Numbers, { out, scale = 0 }: Case): number {
  let worst = 0;
  for (const [key, expected] of Object.entries(out)) {
    const pairs =
      typeof expected === 'number'
        ? [[ours[key] as number, expected] as const]
        : expected.map((value, i) => [(ours[key] as readonly number[])[i]!, value] as const);
    for (const [value, wanted] of pairs) {
      const size = Math.max(Math.abs(wanted), scale, Number.MIN_VALUE);
      const difference = Math.abs(value - wanted) / size;
      // NaN must count as the worst of all, and would lose every comparison.
      worst = difference <= worst ? worst : Number.isNaN(difference) ? Number.POSITIVE_INFINITY : difference;
    }
  }
  return worst;
}

describe('agrees with SciPy, NumPy and exact integers on random inputs', () => {
  it.each(Object.keys(reference))('%s', (name) => {
    const cases = reference[name]!;
    expect(cases.length).toBeGreaterThan(0);
    let worst = 0;
    let culprit: unknown;
    for (const one of cases) {
      const difference = worstDifference(computed[name]!(...(one.args as never[])) as Numbers, one);
      if (difference > worst) {
        worst = difference;
        culprit = one;
      }
    }
    if (process.env.PACEWRIGHT_REFERENCE) console.info(`${name}: ${cases.length} inputs, worst ${worst}`);
    expect(worst, JSON.stringify(culprit)).toBeLessThan(allowed[name] ?? usual);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ChartRule, chartSignals } from '../../src/statistics/chart-signals';
import { clusteredBootstrap } from '../../src/statistics/clustered-bootstrap';
import { comparisonVerdict } from '../../src/statistics/comparison-verdict';
import { controlChartConstants } from '../../src/statistics/control-chart-constants';
import { extrapolationCheck } from '../../src/statistics/extrapolation-check';
import { grubbsCriticalValue } from '../../src/statistics/grubbs-critical-value';
import { grubbsFlag } from '../../src/statistics/grubbs-flag';
import { halfComparison } from '../../src/statistics/half-comparison';
import { individualsChart } from '../../src/statistics/individuals-chart';
import { lackOfFit } from '../../src/statistics/lack-of-fit';
import { learningCurveCumulativeAverage } from '../../src/statistics/learning-curve-cumulative-average';
import { learningCurveUnit } from '../../src/statistics/learning-curve-unit';
import { learningExponent } from '../../src/statistics/learning-exponent';
import { mannWhitney } from '../../src/statistics/mann-whitney';
import { meanDeviationChart } from '../../src/statistics/mean-deviation-chart';
import { meanRangeChart } from '../../src/statistics/mean-range-chart';
import { modifiedZFlag } from '../../src/statistics/modified-z-flag';
import { poissonInterval } from '../../src/statistics/poisson-interval';
import { pooledComparison } from '../../src/statistics/pooled-comparison';
import { regressionPrediction } from '../../src/statistics/regression-prediction';
import { runsTest } from '../../src/statistics/runs-test';
import { seededRandom } from '../../src/statistics/seeded-random';
import { simpleRegression } from '../../src/statistics/simple-regression';
import { standardDataTime } from '../../src/statistics/standard-data-time';
import { trendSlope } from '../../src/statistics/trend-slope';
import { twoDriverRegression } from '../../src/statistics/two-driver-regression';
import { twoOneSidedTests } from '../../src/statistics/two-one-sided-tests';
import { welchComparison } from '../../src/statistics/welch-comparison';
import { wilsonInterval } from '../../src/statistics/wilson-interval';

/** Numbers as bad as they come, mixed with ordinary ones, so that many a list gets past the door. */
const nasty = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 1, max: 20 }) },
  { weight: 2, arbitrary: fc.double({ min: 1e-12, max: 1e12, noNaN: true }) },
  {
    weight: 1,
    arbitrary: fc.constantFrom(0, -0, -1, 5e-324, 1e-320, 1e-160, 1e149, 1e150, 1e308, -1e308, 1 + 2e-16),
  },
);
const wild = fc.oneof(
  { weight: 40, arbitrary: nasty },
  { weight: 1, arbitrary: fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY) },
);
const list = fc.array(wild, { maxLength: 14 });
const share = fc.constantFrom(0.95, 0.5, 1e-12, 1 - 1e-12, 0, 1, Number.NaN);

const confidenceOf = (confidence: number) => ({ confidence });
const pairs = (x: number[], y: number[]) => x.slice(0, y.length).map((total, i) => ({ total, count: y[i]! }));
const rules: ChartRule[] = ['beyond-limits', 'eight-on-one-side', 'two-of-three-beyond-two-thirds'];

type Call = (
  x: number[],
  y: number[],
  z: number[],
  a: number,
  b: number,
  c: number,
  level: number,
) => unknown;

const calls: Record<string, Call> = {
  chartSignals: (x, _, __, a, b, c) => chartSignals(x, { lower: a, centre: b, upper: c }, rules),
  clusteredBootstrap: (x, y, z) =>
    clusteredBootstrap(pairs(x, z), pairs(y, z), {
      random: seededRandom(1),
      statistic: 'ratio',
      resamples: 100,
    }),
  comparisonVerdict: (_, __, ___, a, b, c) => comparisonVerdict({ lower: a, upper: b }, { threshold: c }),
  controlChartConstants: (_, __, ___, a) => controlChartConstants(a),
  extrapolationCheck: (x, _, __, a, b) => extrapolationCheck(x, a, b),
  grubbsCriticalValue: (_, __, ___, a, ____, _____, level) => grubbsCriticalValue(a, level),
  grubbsFlag: (x, _, __, ___, ____, _____, level) => grubbsFlag(x, { significance: level }),
  'grubbsFlag raw': (x) => grubbsFlag(x, { scale: 'raw' }),
  halfComparison: (x, _, __, ___, ____, _____, level) => halfComparison(x, level),
  individualsChart: (x, _, __, a, b) => individualsChart(x, { d2: a, D4: b }),
  lackOfFit: (x, y) => lackOfFit(x, y.slice(0, x.length)),
  'lackOfFit of few sizes': (x, y) =>
    lackOfFit(
      y.map((_, i) => x[i % 3] ?? i % 3),
      y,
    ),
  learningCurveCumulativeAverage: (_, __, ___, a, b, ____, level) =>
    learningCurveCumulativeAverage(a, level, b),
  learningCurveUnit: (_, __, ___, a, b, ____, level) => learningCurveUnit(a, level, b),
  learningExponent: (_, __, ___, a) => learningExponent(a),
  mannWhitney: (x, y) => mannWhitney(x, y),
  meanDeviationChart: (x, y, z) => meanDeviationChart([x, y, z].map((group) => group.slice(0, 3))),
  meanRangeChart: (x, y, z) => meanRangeChart([x, y, z].map((group) => group.slice(0, 3))),
  modifiedZFlag: (x) => modifiedZFlag(x),
  'modifiedZFlag raw': (x) => modifiedZFlag(x, { scale: 'raw' }),
  poissonInterval: (_, __, ___, a, b, ____, level) => poissonInterval(a, b, level),
  pooledComparison: (x, y, _, __, ___, ____, level) => pooledComparison(x, y, confidenceOf(level)),
  'pooledComparison of summaries': (_, __, ___, a, b, c) =>
    pooledComparison({ count: 3, mean: a, deviation: b }, { count: 4, mean: c, deviation: b }),
  regressionPrediction: (x, y, _, a, b) => {
    const { fit } = simpleRegression(x.slice(0, y.length), y.slice(0, x.length));
    return regressionPrediction(fit, [a], { parts: b });
  },
  runsTest: (x, y) => runsTest([...x, ...y]),
  simpleRegression: (x, y, _, __, ___, ____, level) => {
    const { fit, ...line } = simpleRegression(
      x.slice(0, y.length),
      y.slice(0, x.length),
      confidenceOf(level),
    );
    return { ...line, leverages: fit.leverages, residuals: fit.residuals };
  },
  standardDataTime: (x, y, _, a) => standardDataTime(a, x.slice(0, y.length), y.slice(0, x.length)),
  trendSlope: (x, _, __, ___, ____, _____, level) => trendSlope(x, level),
  twoDriverRegression: (x, y, z) => {
    const n = Math.min(x.length, y.length, z.length);
    const { fit, ...plane } = twoDriverRegression(x.slice(0, n), y.slice(0, n), z.slice(0, n));
    return { ...plane, leverages: fit.leverages };
  },
  twoOneSidedTests: (x, y, _, a, __, ___, level) =>
    twoOneSidedTests(x, y, { margin: a, significance: level / 3 }),
  welchComparison: (x, y, _, __, ___, ____, level) => welchComparison(x, y, confidenceOf(level)),
  'welchComparison of summaries': (_, __, ___, a, b, c) =>
    welchComparison({ count: 3, mean: a, deviation: b }, { count: 4, mean: c, deviation: b }),
  wilsonInterval: (_, __, ___, a, b, ____, level) => wilsonInterval(a, b, level),
};

/** Whether every number inside is finite and nothing is null or undefined. */
function isSound(answer: unknown): boolean {
  if (typeof answer === 'number') return Number.isFinite(answer);
  if (typeof answer === 'object' && answer !== null) return Object.values(answer).every(isSound);
  return answer !== null && answer !== undefined;
}

describe('with any numbers at all', () => {
  it.each(Object.keys(calls))('%s answers finite numbers or throws a RangeError in one sentence', (name) => {
    let answered = 0;
    fc.assert(
      fc.property(list, list, list, wild, wild, wild, share, (x, y, z, a, b, c, level) => {
        let answer: unknown;
        try {
          answer = calls[name]!(x, y, z, a, b, c, level);
        } catch (fault) {
          expect(fault).toBeInstanceOf(RangeError);
          expect((fault as RangeError).message).toMatch(/^[a-zA-Z0-9]+ requires (?!.*\. ).+[^.]$/);
          return;
        }
        answered += 1;
        expect(answer).toSatisfy(isSound);
      }),
      { numRuns: 400 },
    );
    // A generator that never gets past the door would prove nothing.
    expect(answered).toBeGreaterThan(0);
  });
});

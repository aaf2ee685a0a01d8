import comparison from '../../fixtures/published/comparison.json';
import learning from '../../fixtures/published/learning.json';
import lines from '../../fixtures/published/lines.json';
import regression from '../../fixtures/published/regression.json';
import spc from '../../fixtures/published/spc.json';
import { controlChartConstants } from '../../src/statistics/control-chart-constants';
import { grubbsCriticalValue } from '../../src/statistics/grubbs-critical-value';
import { grubbsFlag } from '../../src/statistics/grubbs-flag';
import { individualsChart } from '../../src/statistics/individuals-chart';
import { lackOfFit } from '../../src/statistics/lack-of-fit';
import { learningCurveCumulativeAverage } from '../../src/statistics/learning-curve-cumulative-average';
import { learningCurveUnit } from '../../src/statistics/learning-curve-unit';
import { learningExponent } from '../../src/statistics/learning-exponent';
import { leastSquares } from '../../src/statistics/least-squares';
import { mannWhitney } from '../../src/statistics/mann-whitney';
import { meanDeviationChart } from '../../src/statistics/mean-deviation-chart';
import { meanRangeChart } from '../../src/statistics/mean-range-chart';
import { modifiedZFlag } from '../../src/statistics/modified-z-flag';
import { normalProbability } from '../../src/statistics/normal-probability';
import { observedMean } from '../../src/statistics/observed-mean';
import { poissonInterval } from '../../src/statistics/poisson-interval';
import { pooledComparison } from '../../src/statistics/pooled-comparison';
import { regressionPrediction } from '../../src/statistics/regression-prediction';
import { resampledMeans } from '../../src/statistics/resampled-means';
import { runsTest } from '../../src/statistics/runs-test';
import { sampleStandardDeviation } from '../../src/statistics/sample-standard-deviation';
import type { SampleSummary } from '../../src/statistics/sample-summary';
import { seededRandom } from '../../src/statistics/seeded-random';
import { simpleRegression } from '../../src/statistics/simple-regression';
import { standardDataTime } from '../../src/statistics/standard-data-time';
import { twoDriverRegression } from '../../src/statistics/two-driver-regression';
import { twoOneSidedTests } from '../../src/statistics/two-one-sided-tests';
import { welchComparison } from '../../src/statistics/welch-comparison';
import { wilsonInterval } from '../../src/statistics/wilson-interval';
import { recomputeLines } from './recompute-lines';

interface Expected {
  readonly what: string;
  readonly printed: number;
  readonly tolerance: number;
  /** The print is wrong by more than its rounding; `correct` is the answer and the item's note says why. */
  readonly differs?: boolean;
  readonly correct?: number;
}

interface Item {
  readonly id: string;
  readonly source: string;
  readonly flag: string;
  readonly inputs: object;
  readonly expected: readonly Expected[];
  readonly note?: string;
}

export interface PublishedAnswer extends Expected {
  readonly id: string;
  readonly source: string;
  readonly flag: string;
  readonly note: string;
  readonly ours: number;
}

/** What an item of a family is recomputed with, found by the longest beginning of its id. */
type Recompute = (inputs: never) => unknown;

type Sample = readonly number[] | SampleSummary;
interface Pair {
  readonly first: Sample;
  readonly second: Sample;
}
interface Line {
  readonly driver: readonly number[];
  readonly responses: readonly number[];
}
interface Plane {
  readonly first: readonly number[];
  readonly second: readonly number[];
  readonly responses: readonly number[];
}

const recompute: Record<string, Recompute> = {
  ...recomputeLines,

  'spc.nist-flowrate': (i: { values: number[]; d2: number; D4: number }) => individualsChart(i.values, i),
  'spc.constants': (i: { n: number }) => controlChartConstants(i.n),
  'spc.e2': (i: { n: number }) => controlChartConstants(i.n),
  'spc.piston-rings.range': (i: { subgroups: number[][] }) => meanRangeChart(i.subgroups),
  'spc.piston-rings.deviation': (i: { subgroups: number[][] }) => meanDeviationChart(i.subgroups),

  'stat.welch': (i: Pair) => welchComparison(i.first, i.second),
  'stat.pooled': (i: Pair) => {
    const answer = pooledComparison(i.first, i.second);
    const counts = [i.first, i.second].map((sample) => ('count' in sample ? sample.count : sample.length));
    return { ...answer, pooledDeviation: answer.standardError / Math.sqrt(1 / counts[0]! + 1 / counts[1]!) };
  },
  'stat.mannwhitney': (i: { first: number[]; second: number[]; method: 'exact' | 'normal' }) => {
    const answer = mannWhitney(i.first, i.second, i);
    return {
      ...answer,
      otherU: mannWhitney(i.second, i.first).u,
      // The printed one-sided answers lie on the side of the sample, so they are half the two-sided one.
      oneSided: answer.probability / 2,
    };
  },
  'stat.bootstrap.mouse': (i: { treatment: number[]; control: number[] }) => {
    const error = (x: number[]) => sampleStandardDeviation(x) / Math.sqrt(x.length);
    const bootstrapError = (x: number[]) => {
      const clusters = x.map((total) => ({ total, count: 1 }));
      return sampleStandardDeviation(resampledMeans(clusters, 20_000, seededRandom(1993)));
    };
    return {
      treatmentMean: observedMean(i.treatment),
      controlMean: observedMean(i.control),
      difference: observedMean(i.treatment) - observedMean(i.control),
      treatmentError: error(i.treatment),
      controlError: error(i.control),
      idealBootstrapTreatment: bootstrapError(i.treatment),
      idealBootstrapControl: bootstrapError(i.control),
    };
  },
  'stat.tost': (i: Pair & { margin: number; significance: number }) => {
    const welch = welchComparison(i.first, i.second);
    const answer = twoOneSidedTests(i.first, i.second, i);
    const t = (welch.difference - i.margin) / welch.standardError;
    return { ...welch, ...answer, t, equivalent: Number(answer.equivalent) };
  },
  'random.park-miller': (i: { seed: number; draws: number }) => {
    const random = seededRandom(i.seed);
    let last = 0;
    for (let draw = 0; draw < i.draws; draw += 1) last = random();
    return { state: Math.round(last * 2147483647) };
  },
  'share.wilson.newcombe': (i: { counted: number; inspected: number; confidence: number }) =>
    wilsonInterval(i.counted, i.inspected, i.confidence),
  'share.wilson.challenge': (i: { counted: number; inspected: number; z: number }) =>
    wilsonInterval(i.counted, i.inspected, 1 - 2 * normalProbability(-i.z)),
  rate: (i: { count: number; exposure: number; confidence?: number }) =>
    poissonInterval(i.count, i.exposure, i.confidence),
  'outlier.grubbs': (i: { n: number; significance: number }) => ({
    critical: grubbsCriticalValue(i.n, i.significance),
    criticalAtOne: grubbsCriticalValue(i.n, 0.01),
  }),
  'outlier.grubbs.uranium': (i: { times: number[]; scale: 'raw'; significance: number }) =>
    grubbsFlag(i.times, i),
  'outlier.grubbs.wire': (i: { times: number[]; scale: 'raw'; significance: number }) =>
    grubbsFlag(i.times, i),
  'outlier.modified-z': (i: { times: number[]; scale: 'raw' }) => modifiedZFlag(i.times, i),
  'stability.runs.beam': (i: { readings: number[] }) => runsTest(i.readings),
  'stability.runs.table': (i: { fewer: number; more: number }) => {
    const answer: Record<string, number> = {};
    for (let runs = 2; runs <= 7; runs += 1) {
      const test = runsTest(sequenceOfRuns(i.fewer, i.more, runs));
      // The lower tail is the smaller one here, so it is half the two-sided probability.
      if (test.tested) answer[`upTo.${runs}`] = test.probability / 2;
    }
    return answer;
  },

  'learn.unit': (i: { firstTime: number; rate: number; units: number[] }) => ({
    times: i.units.map((unit) => learningCurveUnit(i.firstTime, i.rate, unit)),
    exponent: learningExponent(i.rate),
    withRoundedExponent: i.firstTime * i.units.at(-1)! ** Number(learningExponent(i.rate).toFixed(3)),
  }),
  'learn.cumavg': (i: { firstTime: number; rate: number; units: number[] }) => {
    const curve = i.units.map((units) => learningCurveCumulativeAverage(i.firstTime, i.rate, units));
    return {
      averages: curve.map(({ average }) => average),
      totals: curve.map(({ total }) => total),
      steps: curve.map(({ total }, k) => total - (curve[k - 1]?.total ?? 0)),
    };
  },

  'strd.norris': (i: Line) => lineAnswers(i),
  'strd.pontius': (i: Line) =>
    twoDriverRegression(
      i.driver,
      i.driver.map((x) => x * x),
      i.responses,
    ),
  'strd.longley': (i: { drivers: number[][]; responses: number[] }) => leastSquares(i.drivers, i.responses),
  'strd.wampler': (i: { degree: number; x: number[]; responses: number[] }) => {
    const powers = Array.from({ length: i.degree }, (_, k) => i.x.map((x) => x ** (k + 1)));
    return leastSquares(powers, i.responses);
  },
  'regression.delivery.one-driver': (i: Line) => lineAnswers(i),
  'regression.delivery.two-drivers': (i: Plane) => twoDriverRegression(i.first, i.second, i.responses),
  'regression.delivery.intervals': (i: Plane & { at: number[] }) => {
    const plane = twoDriverRegression(i.first, i.second, i.responses);
    const { value, meanHalfWidth, partsHalfWidth } = regressionPrediction(plane.fit, i.at);
    return {
      ...plane,
      value,
      meanLower: value - meanHalfWidth,
      meanUpper: value + meanHalfWidth,
      partLower: value - partsHalfWidth,
      partUpper: value + partsHalfWidth,
    };
  },
  'regression.intervals': (i: Line) => lineAnswers(i),
  'regression.lack-of-fit': (i: Line) => ({ ...lineAnswers(i), ...lackOfFit(i.driver, i.responses) }),
  'regression.standard-data': (i: { constant: number; coefficients: number[]; drivers: number[] }) => ({
    time: standardDataTime(i.constant, i.coefficients, i.drivers),
  }),
};

function lineAnswers({ driver, responses }: Line) {
  const line = simpleRegression(driver, responses);
  return { ...line, residualSumOfSquares: line.fit.residualSumOfSquares };
}

/** Readings, with two on the median when the sides are unequal, that change sides runs − 1 times. */
function sequenceOfRuns(above: number, below: number, runs: number): number[] {
  const left = [above, below];
  const stretches: number[][] = [];
  for (let run = 0; run < runs; run += 1) {
    const side = run % 2;
    left[side]! -= 1;
    stretches.push([side]);
  }
  for (const side of [0, 1]) {
    for (; left[side]! > 0; left[side]! -= 1) stretches[side]!.push(side);
  }
  const onMedian = above === below ? [] : [0, 0];
  return [...stretches.flat().map((side) => (side === 0 ? 1 : -1)), ...onMedian];
}

/** The value at a dotted path such as `means.upper` or `slopes.1`; a key with a dot in it wins. */
function valueAt(answer: unknown, path: string): number {
  const whole = (answer as Record<string, unknown>)[path];
  const value =
    whole ??
    path.split('.').reduce<unknown>((inner, key) => (inner as Record<string, unknown>)?.[key], answer);
  if (typeof value !== 'number') throw new Error(`no number at ${path}`);
  return value;
}

function answersOf(items: readonly Item[]): PublishedAnswer[] {
  return items.flatMap(({ id, source, flag, note = '', inputs, expected }) => {
    const family = Object.keys(recompute)
      .filter((beginning) => id.startsWith(beginning))
      .sort((a, b) => b.length - a.length)[0];
    if (family === undefined) throw new Error(`nothing recomputes ${id}`);
    const answer = recompute[family]!(inputs as never);
    return expected.map((one) => ({ id, source, flag, note, ...one, ours: valueAt(answer, one.what) }));
  });
}

/** Every published answer about charts, comparison, learning, regression, machines served and lines beside the one computed here. */
export function publishedAnswers(): PublishedAnswer[] {
  return [spc, comparison, learning, regression, lines].flatMap(({ items }) => answersOf(items as Item[]));
}

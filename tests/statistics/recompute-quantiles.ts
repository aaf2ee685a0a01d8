import { chiSquareQuantile } from '../../src/statistics/chi-square-quantile';
import { convertTime, type TimeUnit } from '../../src/statistics/convert-time';
import { fisherQuantile } from '../../src/statistics/fisher-quantile';
import { handTimingDeviation } from '../../src/statistics/hand-timing-deviation';
import { lagOneAutocorrelation } from '../../src/statistics/lag-one-autocorrelation';
import { normalProbability } from '../../src/statistics/normal-probability';
import { normalQuantile } from '../../src/statistics/normal-quantile';
import { observedMean } from '../../src/statistics/observed-mean';
import { runningMeanInterval } from '../../src/statistics/running-mean-interval';
import { sampleStandardDeviation } from '../../src/statistics/sample-standard-deviation';
import { studentQuantile } from '../../src/statistics/student-quantile';
import { varianceComponents } from '../../src/statistics/variance-components';
import type { Recompute } from './published-study-answers';

interface Univariate {
  readonly readings?: readonly number[];
  readonly digits?: string;
  readonly first?: number;
  readonly pair?: readonly [number, number];
  readonly pairs?: number;
}

function readingsOf({ readings, digits, first, pair, pairs = 0 }: Univariate): readonly number[] {
  if (readings) return readings;
  if (digits) return Array.from(digits, Number);
  return [first!, ...Array.from({ length: pairs }, () => pair!).flat()];
}

export const recomputeQuantiles: Recompute = {
  strd: (i: Univariate) => {
    const readings = readingsOf(i);
    return {
      mean: observedMean(readings),
      standardDeviation: sampleStandardDeviation(readings),
      autocorrelation: lagOneAutocorrelation(readings),
    };
  },
  'strd.anova': (i: { groups: number[][] }) => varianceComponents(i.groups),
  'stat.t-table': ({ degreesOfFreedom }: { degreesOfFreedom: number }) =>
    Object.fromEntries(
      [0.9, 0.95, 0.975, 0.99, 0.995].map((p) => [String(p), studentQuantile(p, degreesOfFreedom)]),
    ),
  'stat.normal-quantiles': (i: { probabilities: number[] }) => i.probabilities.map(normalQuantile),
  'stat.normal-two-sided': (i: { deviations: number[] }) =>
    i.deviations.map((z) => normalProbability(z) - normalProbability(-z)),
  'stat.chi-square-table': (i: { probability: number; degreesOfFreedom: number[] }) =>
    i.degreesOfFreedom.map((df) => chiSquareQuantile(i.probability, df)),
  'stat.f-table': (i: { probability: number; degreesOfFreedom: [number, number][] }) =>
    i.degreesOfFreedom.map(([df1, df2]) => fisherQuantile(i.probability, df1, df2)),
  'stat.mean-interval': (i: { n: number; mean: number; standardDeviation: number; confidence: number }) => {
    const squares = i.standardDeviation ** 2 * (i.n - 1);
    const { halfWidth } = runningMeanInterval({ n: i.n, mean: i.mean, squares }, i.confidence);
    return { lower: i.mean - halfWidth, upper: i.mean + halfWidth };
  },
  unit: (i: { conversions: [number, TimeUnit, TimeUnit][] }) =>
    i.conversions.map(([time, from, to]) => convertTime(time, from, to)),
  'unit.tmu.groover': ({ motions }: { motions: number[] }) => {
    const total = motions.reduce((all, motion) => all + motion, 0);
    return { total, seconds: convertTime(total, 'tmu', 's') };
  },
  'unit.reaction.ajp': () => ({ startStopDeviation: handTimingDeviation(1), startStopBias: 0 }),
};

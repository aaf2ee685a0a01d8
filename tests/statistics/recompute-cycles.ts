import { elementTimes } from '../../src/statistics/element-times';
import { meanInterval } from '../../src/statistics/mean-interval';
import { meanRangeSampleSize } from '../../src/statistics/mean-range-sample-size';
import { minimumCyclesByActivity } from '../../src/statistics/minimum-cycles-by-activity';
import { normalProbability } from '../../src/statistics/normal-probability';
import { normalQuantile } from '../../src/statistics/normal-quantile';
import { observedMean } from '../../src/statistics/observed-mean';
import { recommendedCycles } from '../../src/statistics/recommended-cycles';
import { requiredReadingsIterated } from '../../src/statistics/required-readings-iterated';
import { requiredReadingsMeanRange } from '../../src/statistics/required-readings-mean-range';
import { requiredReadingsNormal } from '../../src/statistics/required-readings-normal';
import { requiredReadingsPilot } from '../../src/statistics/required-readings-pilot';
import { requiredReadingsShortForm } from '../../src/statistics/required-readings-short-form';
import { sampleStandardDeviation } from '../../src/statistics/sample-standard-deviation';
import type { Recompute } from './published-study-answers';

interface NormalInputs {
  readonly z: number;
  readonly precision?: number;
  readonly error?: number;
  readonly mean?: number;
  readonly standardDeviation?: number;
  readonly readings?: readonly number[];
  readonly taken?: number;
}

/** Books print z; the functions take the confidence that has it. */
const confidenceOf = (z: number) => 1 - 2 * normalProbability(-z);

function normalForm(inputs: NormalInputs) {
  const { readings = [], z, taken = 0 } = inputs;
  const mean = inputs.mean ?? observedMean(readings);
  const standardDeviation = inputs.standardDeviation ?? sampleStandardDeviation(readings);
  const precision = inputs.precision ?? inputs.error! / mean;
  const answer = requiredReadingsNormal({ mean, standardDeviation, precision, confidence: confidenceOf(z) });
  return { mean, standardDeviation, ...answer, more: answer.readings - taken };
}

/** Readings of mean 1 whose range is the ratio asked. */
function readingsOfRange(ratio: number, count: number): number[] {
  return [1 - ratio / 2, ...Array.from({ length: count - 2 }, () => 1), 1 + ratio / 2];
}

function meanRangeForm({ ratio, precision }: { ratio: number; precision: number }) {
  const raw = (count: number) => requiredReadingsMeanRange(readingsOfRange(ratio, count), precision).raw;
  return { fromFive: raw(5), fromTen: raw(10) };
}

export const recomputeCycles: Recompute = {
  'cyc.formula.z': ({ confidence }: { confidence: number }) => ({ z: normalQuantile((1 + confidence) / 2) }),
  'cyc.z': normalForm,
  'cyc.continuous-then-n': (i: {
    watch: number[];
    printedDeviation: number;
    z: number;
    precision: number;
  }) => {
    const elements = elementTimes(i.watch);
    const mean = observedMean(elements);
    const answer = normalForm({
      z: i.z,
      precision: i.precision,
      mean,
      standardDeviation: i.printedDeviation,
    });
    const more = answer.readings - elements.length;
    const standardDeviation = sampleStandardDeviation(elements);
    return {
      ...answer,
      elements,
      more,
      standardDeviation,
      moreIsAbove40AndAtMost55: more > 40 && more <= 55,
    };
  },
  'cyc.t.niebel-text': requiredReadingsPilot,
  'cyc.t.ejercicios': (i: { readings: number[]; precision: number; confidence: number }) => {
    const interval = meanInterval(i.readings, i.confidence);
    const { raw, readings } = requiredReadingsPilot({ ...i, ...interval });
    return { ...interval, raw, required: readings, errorPercent: 100 * interval.relativeHalfWidth };
  },
  'cyc.t.iterated': (i: Parameters<typeof requiredReadingsIterated>[0]) => ({
    readings: requiredReadingsIterated(i),
  }),
  'cyc.short': (i: { readings: number[]; precision: number }) => {
    const { raw, readings } = requiredReadingsShortForm(i.readings, i.precision);
    return { raw, required: readings };
  },
  'cyc.meanrange': meanRangeForm,
  'cyc.meanrange.procedure': (i: { cycles: number[] }) => i.cycles.map(meanRangeSampleSize),
  'cyc.ge.table': (i: { minutes: number[] }) => i.minutes.map(recommendedCycles),
  'cyc.westinghouse.table': ({ hours }: { hours: number }) => ({
    over10000: minimumCyclesByActivity(hours, 10_001),
    from1000: minimumCyclesByActivity(hours, 1000),
    under1000: minimumCyclesByActivity(hours, 999),
  }),
};

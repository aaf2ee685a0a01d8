import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

type Answer = (...args: unknown[]) => unknown;

const modules = import.meta.glob<Record<string, Answer>>('../../src/statistics/*.ts', { eager: true });
const functions: Readonly<Record<string, Answer>> = Object.assign({}, ...Object.values(modules));

const good = [4, 5, 6, 5];
const asked = { mean: 5, standardDeviation: 1, precision: 0.05, confidence: 0.95 };
const parts = {
  external: 1,
  internal: 2,
  occasional: 0,
  machine: 3,
  allowance: 0.15,
  machineAllowance: 0,
  basis: 'normal_time',
};
const average = { skill: 'D', effort: 'D', conditions: 'D', consistency: 'D' };
const running = { n: 3, mean: 5, squares: 2 };
const clock = { elapsed: 10, beforeStudy: 1, afterStudy: 1, effective: 8, ineffective: 0 };

/** Function, bad arguments, and the rule its message must end with. */
const refusals: readonly (readonly [string, readonly unknown[], string])[] = [
  ...['observedMean', 'median', 'populationStandardDeviation'].flatMap(
    (name) =>
      [
        [name, [[]], 'at least one reading'],
        [name, [[1, Number.NaN]], 'finite readings no larger than 1e150 in size'],
        [name, [[1, Number.POSITIVE_INFINITY]], 'finite readings no larger than 1e150 in size'],
        [name, [[1, Number.NEGATIVE_INFINITY]], 'finite readings no larger than 1e150 in size'],
        [name, [[1e308, 1e308]], 'finite readings no larger than 1e150 in size'],
      ] as const,
  ),
  ['sampleStandardDeviation', [[]], 'at least two readings'],
  ['sampleStandardDeviation', [[5]], 'at least two readings'],
  ['sampleStandardDeviation', [[1e308, -1e308]], 'finite readings no larger than 1e150 in size'],
  ['quantile', [[], 0.5], 'at least one reading'],
  ['quantile', [good, 1.01], 'a share from 0 to 1'],
  ['quantile', [good, Number.NaN], 'a share from 0 to 1'],
  ['coefficientOfVariation', [[5]], 'at least two readings'],
  ['coefficientOfVariation', [[-1, 1]], 'readings with a mean above 0'],
  ['coefficientOfVariation', [[-1, -2]], 'readings with a mean above 0'],
  ['lagOneAutocorrelation', [[5]], 'at least two readings'],
  ['lagOneAutocorrelation', [[0.1, 0.1, 0.1]], 'readings that are not all equal'],
  ['effectiveReadings', [0, 0.5], 'a count of at least one reading'],
  ['effectiveReadings', [10, 1], 'an autocorrelation from -1 to below 1'],
  ['effectiveReadings', [10, Number.NaN], 'an autocorrelation from -1 to below 1'],
  ['meanInterval', [[5], 0.95], 'at least two readings'],
  ['meanInterval', [good, 95], 'a confidence above 0 and below 1'],
  ['meanInterval', [[0, 0], 0.95], 'readings with a mean above 0'],
  ['serialMeanInterval', [[5, 6], 0.95], 'at least three readings'],
  ['serialMeanInterval', [good, 1], 'a confidence above 0 and below 1'],
  ['serialMeanInterval', [[-5, -6, -7], 0.95], 'readings with a mean above 0'],
  ['readingsSummary', [[5], 0.95], 'at least two readings'],
  ['readingsSummary', [[5, Number.NaN], 0.95], 'finite readings no larger than 1e150 in size'],
  ['readingsSummary', [[5, 1e200], 0.95], 'finite readings no larger than 1e150 in size'],
  ['readingsSummary', [[-5, 5], 0.95], 'readings with a mean above 0'],
  ['readingsSummary', [good, 0], 'a confidence above 0 and below 1'],
  ['addReading', [running, Number.NaN], 'finite readings no larger than 1e150 in size'],
  ['removeReading', [running, 1e308], 'finite readings no larger than 1e150 in size'],
  ['removeReading', [{ n: 0, mean: 0, squares: 0 }, 5], 'running statistics that hold a reading'],
  ['runningMeanInterval', [{ n: 1, mean: 5, squares: 0 }, 0.95], 'at least two readings'],
  ['runningMeanInterval', [{ n: 2, mean: 0, squares: 0 }, 0.95], 'readings with a mean above 0'],
  ['runningMeanInterval', [running, 2], 'a confidence above 0 and below 1'],
  ['normalProbability', [Number.NaN], 'a finite z'],
  ['normalQuantile', [0], 'a probability above 0 and below 1'],
  ['normalQuantile', [1], 'a probability above 0 and below 1'],
  ['studentProbability', [1, 0], 'degrees of freedom from 0.1 to 1e15'],
  ['studentQuantile', [0.975, 0], 'degrees of freedom from 0.1 to 1e15'],
  ['studentQuantile', [0.975, Number.POSITIVE_INFINITY], 'degrees of freedom from 0.1 to 1e15'],
  ['studentQuantile', [1, 5], 'a probability above 0 and below 1'],
  ['chiSquareProbability', [-1, 5], 'a finite value of 0 or more'],
  ['chiSquareQuantile', [0.5, -1], 'degrees of freedom from 0.1 to 1e9'],
  ['fisherProbability', [-1, 2, 3], 'a finite ratio of 0 or more'],
  ['fisherQuantile', [0.5, 2, 0], 'degrees of freedom from 0.1 to 1e15'],
  ['wholeReadings', [-1], 'a finite number of readings that is not negative'],
  ['wholeReadings', [Number.NaN], 'a finite number of readings that is not negative'],
  ...['requiredReadingsNormal', 'requiredReadingsIterated', 'requiredReadingsPilot'].flatMap(
    (name) =>
      [
        [name, [{ ...asked, n: 5, mean: 0 }], 'a mean above 0'],
        [name, [{ ...asked, n: 5, mean: -1 }], 'a mean above 0'],
        [name, [{ ...asked, n: 5, standardDeviation: -1 }], 'a standard deviation of 0 or more'],
        [name, [{ ...asked, n: 5, standardDeviation: Number.NaN }], 'a standard deviation of 0 or more'],
        [name, [{ ...asked, n: 5, precision: 0 }], 'a precision above 0'],
        [name, [{ ...asked, n: 5, confidence: 1 }], 'a confidence above 0 and below 1'],
        [
          name,
          [{ ...asked, n: 5, standardDeviation: 1e308 }],
          'a spread below a million times the precision asked',
        ],
      ] as const,
  ),
  ['requiredReadingsPilot', [{ ...asked, n: 1 }], 'a whole number of at least two pilot readings'],
  ['requiredReadingsShortForm', [[5], 0.05], 'at least two readings'],
  ['requiredReadingsShortForm', [[0, 0], 0.05], 'readings with a mean above 0'],
  ['requiredReadingsShortForm', [good, 0], 'a precision above 0'],
  ['requiredReadingsMeanRange', [[5], 0.05], 'at least two readings'],
  ['requiredReadingsMeanRange', [Array(51).fill(5), 0.05], 'at most 50 readings'],
  ['requiredReadingsMeanRange', [[-5, -6], 0.05], 'readings with a mean above 0'],
  ['meanRangeSampleSize', [0], 'a cycle above 0 minutes'],
  ['recommendedCycles', [Number.NaN], 'a cycle above 0 minutes'],
  ['minimumCyclesByActivity', [0, 100], 'a time above 0 hours per piece'],
  ['minimumCyclesByActivity', [1, 0], 'a yearly count above 0'],
  ['normalTime', [1, 0], 'a rating above 0 and at most 1000'],
  ['normalTime', [-1, 100], 'an observed time from 0 to 1e150'],
  ['normalTime', [1, 100, '0-200'], 'a scale of 60-80, 75-100, 100-133 or 0-100'],
  ['meanNormalTime', [[]], 'at least one reading'],
  ['meanNormalTime', [[{ observed: 1, rating: 0 }]], 'a rating above 0 and at most 1000'],
  ['meanNormalTime', [[{ observed: 1e308, rating: 100 }]], 'an observed time from 0 to 1e150'],
  ['standardRating', ['toString'], 'a scale of 60-80, 75-100, 100-133 or 0-100'],
  ['convertRating', [-1, '60-80', '0-100'], 'a rating of 0 or more'],
  ['convertRating', [100, '60-80', '0-80'], 'a scale of 60-80, 75-100, 100-133 or 0-100'],
  ['levellingFactor', [{ ...average, skill: 'G' }], 'a listed class of skill'],
  ['levellingFactor', [{ ...average, consistency: 'toString' }], 'a listed class of consistency'],
  ['syntheticRating', [[]], 'at least one benchmark element'],
  ['syntheticRating', [[{ predetermined: 1, observed: 0 }]], 'times above 0'],
  ['objectiveRating', [0, {}], 'a pace above 0'],
  ['objectiveRating', [1, { body: 'Z' }], 'listed classes of difficulty'],
  ['objectiveRating', [1, { toString: 'A' }], 'listed classes of difficulty'],
  ['objectiveRating', [1, {}, -0.1], 'a weight adjustment of 0 or more'],
  ['totalAllowance', [[0.05, -0.01]], 'finite components of 0 or more'],
  ['relaxationAllowance', [{ noise: 'deafening' }], 'listed classes of working conditions'],
  ['relaxationAllowance', [{ forcePounds: 71 }], 'a force from 0 to 70 pounds'],
  ['relaxationAllowance', [{ atmospherePercent: 11 }], 'an atmosphere from 0 to 10 percent'],
  ['allowanceFactor', [1, 'shift'], 'an allowance below the whole shift'],
  ['allowanceFactor', [1.5, 'shift'], 'an allowance below the whole shift'],
  ['allowanceFactor', [-0.1, 'normal_time'], 'an allowance from 0 to 1000000'],
  ['allowanceFactor', [0.1, 'week'], 'a basis of normal_time or shift'],
  ['convertAllowance', [1, 'shift', 'normal_time'], 'an allowance below the whole shift'],
  ['convertAllowance', [0.1, 'shift', 'week'], 'a basis of normal_time or shift'],
  ['standardTime', [{ ...parts, external: -1 }], 'times from 0 to 1e150'],
  ['standardTime', [{ ...parts, machine: Number.NaN }], 'times from 0 to 1e150'],
  ['standardTime', [{ ...parts, basis: 'shift', allowance: 1 }], 'an allowance below the whole shift'],
  ['standardTime', [{ ...parts, basis: 'shift', machineAllowance: 1 }], 'an allowance below the whole shift'],
  ['standardTime', [{ ...parts, basis: 'week' }], 'a basis of normal_time or shift'],
  ['unoccupiedRest', [-1], 'a wait of 0 or more minutes'],
  ['occasionalFrequency', [0.5, 30, 0.95], 'a whole number of occurrences from 0 to 1e9'],
  ['occasionalFrequency', [1, 0, 0.95], 'at least one work unit'],
  ['occasionalFrequency', [1, 30, 95], 'a confidence above 0 and below 1'],
  ['totalUncertainty', [{ sampling: -1, rating: 0, frequency: 0 }], 'finite shares of 0 or more'],
  ['varianceComponents', [[good]], 'at least two operator-days'],
  ['varianceComponents', [[good, []]], 'at least one reading'],
  ['varianceComponents', [[[5], [6]]], 'an operator-day with more than one reading'],
  ['operatorDayInterval', [[good], 0.95], 'at least two operator-days'],
  ['operatorDayInterval', [[good, [-50, -60]], 0.95], 'readings with a mean above 0'],
  ['operatorDayInterval', [[good, good], 95], 'a confidence above 0 and below 1'],
  ['varianceOfMean', [{ within: 1, between: 1, groups: 0, n: 1 }], 'at least one operator-day'],
  ['convertTime', [1, 's', 'fortnight'], 'units of ms, s, min, h, centiminute, decimalHour or tmu'],
  ['convertTime', [Number.NaN, 's', 'h'], 'a finite time'],
  ['elementTimes', [[5, 4]], 'watch readings that never fall'],
  ['elementTimes', [[]], 'at least one reading'],
  ['clockCheck', [{ ...clock, elapsed: 0 }], 'an elapsed time above 0'],
  ['clockCheck', [{ ...clock, effective: -1 }], 'times from 0 to 1e150'],
  ['handTimingDeviation', [0], 'a count of at least one reading'],
];

/** The ends of a range that a rule lets in: a stricter sign in the code would shut them out. */
const edges: readonly (readonly [string, readonly unknown[], unknown])[] = [
  ['chiSquareProbability', [0, 3], 0],
  ['fisherProbability', [0, 2, 3], 0],
  ['convertRating', [0, '60-80', '0-100'], 0],
  ['fisherTails', [0, 2, 3], { lower: 0, upper: 1, slope: 0 }],
  ['meanNormalTime', [[{ observed: 0, rating: 100 }]], 0],
  ['meanNormalTime', [[{ observed: 1e150, rating: 100 }]], 1e150],
  // Ten readings that all but repeat each other are still one.
  ['effectiveReadings', [10, 0.99], 1],
  ['quantile', [good, 0], 4],
  ['quantile', [good, 1], 6],
  ['normalTime', [0, 100], 0],
  ['normalTime', [1, 1000], 10],
  ['effectiveReadings', [1, 0], 1],
  ['effectiveReadings', [9, -1], 9],
  ['relaxationAllowance', [{ forcePounds: 70, atmospherePercent: 0 }], 0.31],
  ['allowanceFactor', [0, 'shift'], 1],
  ['objectiveRating', [1, {}, 0], 1],
  ['unoccupiedRest', [0], 0],
  ['elementTimes', [[5, 5]], [5, 0]],
  [
    'totalUncertainty',
    [{ sampling: 0, rating: 0, frequency: 0 }],
    { total: 0, moreReadingsCannotHelp: false },
  ],
  ['handTimingDeviation', [4], (Math.SQRT2 * 0.07) / 2],
  ['varianceOfMean', [{ within: 0, between: 0, groups: 1, n: 1 }], 0],
  ['observedMean', [[1e150, 1e150]], 1e150],
  // The mean lies half-way between two doubles; what its rounding puts into the squares is taken back.
  ['sampleStandardDeviation', [[1e15, 1e15 + 0.125]], Math.sqrt(0.125 ** 2 / 2)],
  [
    'occasionalFrequency',
    [0, 1, 0.95],
    { perUnit: 0, lower: 0, upper: expect.closeTo(-Math.log(0.025), 12), tooFewSeen: true },
  ],
  ['studentQuantile', [0.5, 0.1], 0],
];

describe('the edge of good input', () => {
  it.each(edges)('%s(%j) is %j', (name, args, answer) => {
    expect(functions[name]!(...args)).toEqual(answer);
  });
});

describe('bad input', () => {
  it.each(refusals)('%s(%j) throws a RangeError: %s', (name, args, rule) => {
    expect(() => functions[name]!(...args)).toThrow(new RangeError(`${name} requires ${rule}`));
  });
});

/** Numbers that a slip, a bad file or a stopped clock can bring. */
const nasty = fc.oneof(
  fc.constantFrom(
    0,
    -0,
    1,
    -1,
    0.5,
    0.95,
    2,
    3,
    100,
    1e-300,
    5e-324,
    1e15,
    1e150,
    1e151,
    1e200,
    1e308,
    -1e308,
  ),
  fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY),
  fc.double(),
);
const several = fc.array(nasty, { maxLength: 5 });
const basis = fc.constantFrom('normal_time', 'shift', 'week');
const scale = fc.constantFrom('60-80', '75-100', '100-133', '0-100', 'none');
const unit = fc.constantFrom('ms', 's', 'min', 'h', 'centiminute', 'decimalHour', 'tmu', 'year');
const record = (...keys: string[]) => fc.record(Object.fromEntries(keys.map((key) => [key, nasty])));
const asks = record('n', 'mean', 'standardDeviation', 'precision', 'confidence');
const days = fc.array(several, { maxLength: 3 });

const nastyArguments: Readonly<Record<string, readonly fc.Arbitrary<unknown>[]>> = {
  observedMean: [several],
  median: [several],
  quantile: [several, nasty],
  sampleStandardDeviation: [several],
  populationStandardDeviation: [several],
  coefficientOfVariation: [several],
  lagOneAutocorrelation: [several],
  effectiveReadings: [nasty, nasty],
  meanInterval: [several, nasty],
  serialMeanInterval: [several, nasty],
  readingsSummary: [several, nasty],
  normalProbability: [nasty],
  normalQuantile: [nasty],
  studentProbability: [nasty, nasty],
  studentQuantile: [nasty, nasty],
  chiSquareProbability: [nasty, nasty],
  chiSquareQuantile: [nasty, nasty],
  fisherProbability: [nasty, nasty, nasty],
  fisherQuantile: [nasty, nasty, nasty],
  wholeReadings: [nasty],
  requiredReadingsNormal: [asks],
  requiredReadingsPilot: [asks],
  requiredReadingsIterated: [asks],
  requiredReadingsShortForm: [several, nasty],
  requiredReadingsMeanRange: [several, nasty],
  meanRangeSampleSize: [nasty],
  recommendedCycles: [nasty],
  minimumCyclesByActivity: [nasty, nasty],
  normalTime: [nasty, nasty, scale],
  meanNormalTime: [fc.array(record('observed', 'rating'), { maxLength: 3 }), scale],
  convertRating: [nasty, scale, scale],
  syntheticRating: [fc.array(record('predetermined', 'observed'), { maxLength: 3 })],
  objectiveRating: [nasty, fc.constant({}), nasty],
  totalAllowance: [several],
  relaxationAllowance: [record('forcePounds', 'atmospherePercent')],
  allowanceFactor: [nasty, basis],
  convertAllowance: [nasty, basis, basis],
  standardTime: [
    fc
      .tuple(record('external', 'internal', 'occasional', 'machine', 'allowance', 'machineAllowance'), basis)
      .map(([times, chosen]) => ({ ...times, basis: chosen })),
  ],
  unoccupiedRest: [nasty],
  occasionalFrequency: [nasty, nasty, nasty],
  internalOccasionalEffect: [record('internal', 'occasional', 'machine', 'perUnit')],
  totalUncertainty: [record('sampling', 'rating', 'frequency')],
  varianceComponents: [days],
  varianceOfMean: [record('within', 'between', 'groups', 'n')],
  operatorDayInterval: [days, nasty],
  convertTime: [nasty, unit, unit],
  elementTimes: [several, nasty],
  clockCheck: [record('elapsed', 'beforeStudy', 'afterStudy', 'effective', 'ineffective')],
  handTimingDeviation: [nasty],
  addReading: [fc.constant(running), nasty],
  removeReading: [fc.constant(running), nasty],
  runningMeanInterval: [fc.constant(running), nasty],
};

/** True when every number inside is finite; only `governing` may be null. */
function isWhole(value: unknown, key = ''): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value === 'boolean' || typeof value === 'string') return true;
  if (value === null) return key === 'governing';
  return typeof value === 'object' && Object.entries(value).every(([name, inner]) => isWhole(inner, name));
}

describe('whatever comes in, what comes out is a finite answer or a RangeError that names the function', () => {
  it.each(Object.entries(nastyArguments))('%s', (name, args) => {
    fc.assert(
      fc.property(fc.tuple(...args), (given) => {
        try {
          return isWhole(functions[name]!(...given));
        } catch (error) {
          return error instanceof RangeError && error.message.startsWith(`${name} requires `);
        }
      }),
      { numRuns: 1000, seed: 3 },
    );
  });

  it('holds for every function with readings, times or shares in this folder part', () => {
    const unknown = Object.keys(nastyArguments).filter((name) => !(name in functions));
    expect(unknown).toEqual([]);
  });
});

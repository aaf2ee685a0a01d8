import { allowanceFactor } from '../../src/statistics/allowance-factor';
import { convertRating } from '../../src/statistics/convert-rating';
import { type LevellingClasses, levellingFactor } from '../../src/statistics/levelling-factor';
import { normalTime } from '../../src/statistics/normal-time';
import { type DifficultyClasses, objectiveRating } from '../../src/statistics/objective-rating';
import type { RatingScale } from '../../src/statistics/standard-rating';
import { type BenchmarkElement, syntheticRating } from '../../src/statistics/synthetic-rating';
import type { Recompute } from './published-study-answers';

const scales: readonly RatingScale[] = ['60-80', '75-100', '100-133', '0-100'];
const average: LevellingClasses = { skill: 'D', effort: 'D', conditions: 'D', consistency: 'D' };
const answersBy = <Key extends string>(keys: readonly Key[], answer: (key: Key) => number) =>
  Object.fromEntries(keys.map((key) => [key, answer(key)]));

export const recomputeRating: Recompute = {
  'rate.scales': (i: { rating: number }) =>
    answersBy(scales, (scale) => convertRating(i.rating, '0-100', scale)),
  'rate.basic': (i: { observed: number; rating: number }) => ({ normal: normalTime(i.observed, i.rating) }),
  'rate.westinghouse.table': (i: { attribute: keyof LevellingClasses; classes: string[] }) =>
    answersBy(i.classes, (chosen) => levellingFactor({ ...average, [i.attribute]: chosen }) - 1),
  'rate.westinghouse.range': () => ({
    largest: levellingFactor({ skill: 'A1', effort: 'A1', conditions: 'A', consistency: 'A' }),
    smallest: levellingFactor({ skill: 'F2', effort: 'F2', conditions: 'F', consistency: 'F' }),
  }),
  'rate.westinghouse.ex1': (i: { observed: number; classes: LevellingClasses; allowance: number }) => {
    const factor = levellingFactor(i.classes);
    const normal = normalTime(i.observed, 100 * factor);
    return { factor, normal, standard: normal * allowanceFactor(i.allowance, 'shift') };
  },
  'rate.synthetic': (i: { elements: BenchmarkElement[] }) => syntheticRating(i.elements),
  'rate.objective': (i: { pace: number; secondary: number }) => ({
    factor: objectiveRating(i.pace, {}, i.secondary),
  }),
  'rate.objective.table': (i: { kind: keyof DifficultyClasses; classes: string[] }) =>
    answersBy(i.classes, (chosen) => 100 * (objectiveRating(1, { [i.kind]: chosen }) - 1)),
};

import allowances from '../../fixtures/published/allowances.json';
import cycles from '../../fixtures/published/cycles.json';
import univariate from '../../fixtures/published/nist-univariate.json';
import quantiles from '../../fixtures/published/quantiles.json';
import rating from '../../fixtures/published/rating.json';
import studies from '../../fixtures/published/studies.json';
import units from '../../fixtures/published/units.json';
import type { PublishedAnswer } from './published-answers';
import { recomputeAllowances } from './recompute-allowances';
import { recomputeCycles } from './recompute-cycles';
import { recomputeQuantiles } from './recompute-quantiles';
import { recomputeRating } from './recompute-rating';
import { recomputeStudies } from './recompute-studies';

interface Item {
  readonly id: string;
  readonly source: string;
  readonly flag: string;
  readonly inputs: object;
  readonly expected: readonly Pick<
    PublishedAnswer,
    'what' | 'printed' | 'tolerance' | 'differs' | 'correct'
  >[];
  readonly note?: string;
}

/** What a family of items is recomputed with, by the beginning of its ids; the longest beginning wins. */
export type Recompute = Readonly<Record<string, (inputs: never) => unknown>>;

const recompute: Recompute = {
  ...recomputeCycles,
  ...recomputeRating,
  ...recomputeAllowances,
  ...recomputeStudies,
  ...recomputeQuantiles,
};

/** The number at a dotted path such as `means.0`; a key with a dot in it wins; true counts as 1. */
function numberAt(answer: unknown, path: string): number {
  const inside = (value: unknown, key: string) => (value as Record<string, unknown> | undefined)?.[key];
  const value = inside(answer, path) ?? path.split('.').reduce(inside, answer);
  if (typeof value === 'boolean') return Number(value);
  if (typeof value !== 'number') throw new Error(`no number at ${path}`);
  return value;
}

function answersOf({ id, source, flag, inputs, expected, note = '' }: Item): PublishedAnswer[] {
  const family = Object.keys(recompute)
    .filter((beginning) => id.startsWith(beginning))
    .sort((a, b) => b.length - a.length)[0];
  if (family === undefined) throw new Error(`nothing recomputes ${id}`);
  const answer = recompute[family]!(inputs as never);
  return expected.map((one) => ({ id, source, flag, note, ...one, ours: numberAt(answer, one.what) }));
}

/** Every published answer about cycles, rating, allowances, whole studies, readings and units, with ours. */
export function publishedStudyAnswers(): PublishedAnswer[] {
  const items: readonly Item[] = [cycles, rating, allowances, studies, univariate, quantiles, units].flatMap(
    (file): readonly Item[] => file.items,
  );
  return items.flatMap(answersOf);
}

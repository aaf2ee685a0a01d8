import { requireNumber } from './require-number';

/** Secondary adjustments for the difficulty of the job, in hundredths, by class. */
const DIFFICULTY = {
  body: { A: 0, B: 1, C: 2, D: 5, E: 8, E2: 10 },
  pedal: { F: 0, G: 5 },
  bothHands: { H: 0, H2: 18 },
  eyeAndHand: { I: 0, J: 2, K: 4, L: 7, M: 10 },
  handling: { N: 0, O: 1, P: 2, Q: 3, R: 5 },
} as const;

type Difficulty = typeof DIFFICULTY;
/** One class of each kind; a kind left out adds nothing. */
export type DifficultyClasses = { readonly [Kind in keyof Difficulty]?: keyof Difficulty[Kind] };

/**
 * Objective rating: pace judged against one standard film for every job, then corrected for how hard this job is.
 *
 * Formula: factor = P₁·(1 + ΣP₂); normal time = observed time · factor
 *   P₁  pace, 1 at standard; P₂  secondary adjustments as shares: body used, pedals, both hands, eye and hand,
 *   handling, and weight, which is given as a share because its table is not held here; factor a pure number
 * Source: Mundel & Danner, Motion and Time Study. From memory: check it against the book.
 *
 * @throws {RangeError} objectiveRating requires a pace above 0
 * @throws {RangeError} objectiveRating requires a weight adjustment of 0 or more
 * @throws {RangeError} objectiveRating requires listed classes of difficulty
 * @throws {RangeError} objectiveRating requires a pace and adjustments whose product is a finite number
 * @example
 * objectiveRating(0.95, { body: 'E', handling: 'P', eyeAndHand: 'M' }) // => 1.14
 */
export function objectiveRating(pace: number, classes: DifficultyClasses, weightAdjustment = 0): number {
  requireNumber('objectiveRating', 'a pace above 0', pace, pace > 0);
  requireNumber(
    'objectiveRating',
    'a weight adjustment of 0 or more',
    weightAdjustment,
    weightAdjustment >= 0,
  );
  let hundredths = 0;
  for (const [kind, chosen] of Object.entries(classes)) {
    const table: Readonly<Record<string, number>> | undefined = Object.hasOwn(DIFFICULTY, kind)
      ? DIFFICULTY[kind as keyof Difficulty]
      : undefined;
    const share = table && Object.hasOwn(table, chosen) ? table[chosen] : undefined;
    if (share === undefined) throw new RangeError('objectiveRating requires listed classes of difficulty');
    hundredths += share;
  }
  const factor = pace * (1 + hundredths / 100 + weightAdjustment);
  requireNumber('objectiveRating', 'a pace and adjustments whose product is a finite number', factor, true);
  return factor;
}

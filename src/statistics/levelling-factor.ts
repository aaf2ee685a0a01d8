/** Westinghouse levelling: what each class adds to 1. */
const SKILL = {
  A1: 0.15,
  A2: 0.13,
  B1: 0.11,
  B2: 0.08,
  C1: 0.06,
  C2: 0.03,
  D: 0,
  E1: -0.05,
  E2: -0.1,
  F1: -0.16,
  F2: -0.22,
} as const;
const EFFORT = {
  A1: 0.13,
  A2: 0.12,
  B1: 0.1,
  B2: 0.08,
  C1: 0.05,
  C2: 0.02,
  D: 0,
  E1: -0.04,
  E2: -0.08,
  F1: -0.12,
  F2: -0.17,
} as const;
const CONDITIONS = { A: 0.06, B: 0.04, C: 0.02, D: 0, E: -0.03, F: -0.07 } as const;
const CONSISTENCY = { A: 0.04, B: 0.03, C: 0.01, D: 0, E: -0.02, F: -0.04 } as const;

/** Classes from A (super, excessive, ideal, perfect) over D (average) to F (poor). */
export interface LevellingClasses {
  readonly skill: keyof typeof SKILL;
  readonly effort: keyof typeof EFFORT;
  readonly conditions: keyof typeof CONDITIONS;
  readonly consistency: keyof typeof CONSISTENCY;
}

/**
 * Westinghouse levelling factor: pace judged as skill, effort, conditions and consistency.
 *
 * Formula: factor = 1 + skill + effort + conditions + consistency; normal time = observed time · factor
 *   factor a pure number from 0.50 to 1.38
 * Source: Lowry, Maynard & Stegemerten, Time and Motion Study (1927 and later). Another, simplified table
 *   (García Criollo 2005, p. 193) goes by the same name: this is not it.
 *
 * @throws {RangeError} levellingFactor requires a listed class of skill
 * @throws {RangeError} levellingFactor requires a listed class of effort
 * @throws {RangeError} levellingFactor requires a listed class of conditions
 * @throws {RangeError} levellingFactor requires a listed class of consistency
 * @example
 * levellingFactor({ skill: 'C1', effort: 'B2', conditions: 'C', consistency: 'C' }) // => 1.17
 */
export function levellingFactor(classes: LevellingClasses): number {
  // In whole hundredths, as printed, so that the sum is the printed sum.
  const hundredths =
    Math.round(100 * listed('skill', SKILL, classes.skill)) +
    Math.round(100 * listed('effort', EFFORT, classes.effort)) +
    Math.round(100 * listed('conditions', CONDITIONS, classes.conditions)) +
    Math.round(100 * listed('consistency', CONSISTENCY, classes.consistency));
  return (100 + hundredths) / 100;
}

function listed<Class extends string>(
  what: string,
  table: Readonly<Record<Class, number>>,
  chosen: Class,
): number {
  if (!Object.hasOwn(table, chosen)) {
    throw new RangeError(`levellingFactor requires a listed class of ${what}`);
  }
  return table[chosen];
}

import { requireNumber } from './require-number';

/** Percent of normal time, as printed. Both constants are always in. */
const CONSTANT = { personal: 5, basicFatigue: 4 } as const;
const VARIABLE = {
  standing: { no: 0, yes: 2 },
  position: { natural: 0, slightlyAwkward: 0, awkward: 2, veryAwkward: 7 },
  light: { adequate: 0, slightlyBelow: 0, wellBelow: 2, quiteInadequate: 5 },
  attention: { ordinary: 0, fairlyFine: 0, fine: 2, veryFine: 5 },
  noise: { quiet: 0, continuous: 0, intermittentLoud: 2, intermittentVeryLoud: 5, highPitchedLoud: 5 },
  mentalStrain: { none: 0, fairlyComplex: 1, complex: 4, veryComplex: 8 },
  monotony: { low: 0, medium: 1, high: 4 },
  tediousness: { none: 0, ratherTedious: 0, tedious: 2, veryTedious: 5 },
} as const;

/** Weight lifted or force used, in pounds, up to which a row holds, and its percent. */
const FORCE: readonly (readonly [upToPounds: number, percent: number])[] = [
  [5, 0],
  [10, 1],
  [15, 2],
  [20, 3],
  [25, 4],
  [30, 5],
  [35, 7],
  [40, 9],
  [45, 11],
  [50, 13],
  [60, 17],
  [70, 22],
];

type Variable = typeof VARIABLE;
/** What the work asks of a person: one class of each kind. A kind left out adds nothing. */
export type WorkingConditions = { readonly [Kind in keyof Variable]?: keyof Variable[Kind] } & {
  /** Weight lifted or force used, in pounds. */
  readonly forcePounds?: number;
  /** Heat and humidity, judged, 0 to 10 percent. */
  readonly atmospherePercent?: number;
};

/**
 * Relaxation allowance from the International Labour Office's table, constants and variables added.
 *
 * Formula: A = (5 + 4 + Σ variable percentages)/100
 *   A  share of normal time. A weight between two rows takes the heavier row: the table prints nothing between.
 *   It asks what the work is like, never who does it: columns by sex, as older editions had, are not held here.
 * Source: International Labour Office, as printed in Stevenson, Operations Management, 14th edition, table 7.4,
 *   and in Niebel & Freivalds, Methods, Standards, and Work Design; the two agree.
 *
 * @throws {RangeError} relaxationAllowance requires listed classes of working conditions
 * @throws {RangeError} relaxationAllowance requires a force from 0 to 70 pounds
 * @throws {RangeError} relaxationAllowance requires an atmosphere from 0 to 10 percent
 * @example
 * relaxationAllowance({ standing: 'yes', forcePounds: 45, light: 'quiteInadequate', noise: 'intermittentVeryLoud' }) // => 0.32
 */
export function relaxationAllowance(conditions: WorkingConditions): number {
  const { forcePounds = 0, atmospherePercent = 0, ...classes } = conditions;
  const name = 'relaxationAllowance';
  requireNumber(name, 'a force from 0 to 70 pounds', forcePounds, forcePounds >= 0 && forcePounds <= 70);
  requireNumber(
    name,
    'an atmosphere from 0 to 10 percent',
    atmospherePercent,
    atmospherePercent >= 0 && atmospherePercent <= 10,
  );
  let percent = CONSTANT.personal + CONSTANT.basicFatigue + atmospherePercent;
  percent += FORCE.find(([upTo]) => forcePounds <= upTo)![1];
  for (const [kind, chosen] of Object.entries(classes)) percent += variablePercent(kind, chosen);
  return percent / 100;
}

function variablePercent(kind: string, chosen: string): number {
  const table: Readonly<Record<string, number>> | undefined = Object.hasOwn(VARIABLE, kind)
    ? VARIABLE[kind as keyof Variable]
    : undefined;
  const percent = table && Object.hasOwn(table, chosen) ? table[chosen] : undefined;
  if (percent === undefined) {
    throw new RangeError('relaxationAllowance requires listed classes of working conditions');
  }
  return percent;
}

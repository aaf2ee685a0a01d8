import type { AllowanceTerms } from '../study/allowance-terms';

/** How large a part is in one respect, such as its perimeter in metres: what a variable element grows with. */
export interface PartSize {
  /** With its unit, as the shop words it: `perimeter, m`. */
  readonly driver: string;
  readonly value: number;
}

/** Facts about what a part should take, made from studies. */
export type StandardFact =
  | { readonly kind: 'part-sized'; readonly part: string; readonly sizes: readonly PartSize[] }
  | ({ readonly kind: 'standard-issued'; readonly part: string } & IssuedStandard);

/** A standard as it was issued: another one is another revision, and this one never changes. */
export interface IssuedStandard {
  readonly standardTimeMs: number;
  readonly normalTimeMs: number;
  readonly terms: AllowanceTerms;
  readonly methodRevision: number;
  readonly conditions: string;
  /** The studies it rests on, and how wide: cycles, operators by code, days as 2026-03-09. */
  readonly studies: readonly string[];
  readonly cycles: number;
  readonly operators: readonly string[];
  readonly days: readonly string[];
  /** Total uncertainty as a share of the standard time; null where it cannot be said. */
  readonly uncertainty: number | null;
  /** Day from which it holds. */
  readonly inForceOn: string;
  /** Day on which it is due for a check study at the latest. */
  readonly checkBy: string;
  readonly issuedBy: string;
}

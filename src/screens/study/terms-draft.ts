import type { AllowanceBasis, AllowanceTerms } from '../../domain/study/allowance-terms';
import { asTyped, parseDecimal } from '../../i18n/parse-number';

/** Allowances as they are being written. */
export interface TermsDraft {
  readonly allowance: string;
  readonly basis: AllowanceBasis;
  readonly machineAllowance: string;
  /** What the allowance is for; empty while only the sum is given. */
  readonly lines: readonly { readonly name: string; readonly pct: string }[];
}

export function draftOfTerms(terms: AllowanceTerms): TermsDraft {
  const { allowancePct, basis, machineAllowancePct, lines = [] } = terms;
  return {
    allowance: asTyped(allowancePct),
    basis,
    machineAllowance: asTyped(machineAllowancePct),
    lines: lines.map(({ name, pct }) => ({ name, pct: asTyped(pct) })),
  };
}

/** The allowances typed, with a point or a comma; null when one is no number from 0 to below 100. */
export function termsOf({ allowance, basis, machineAllowance, lines }: TermsDraft): AllowanceTerms | null {
  const machineAllowancePct = percentOf(machineAllowance);
  if (machineAllowancePct === null) return null;
  if (lines.length === 0) {
    const allowancePct = percentOf(allowance);
    return allowancePct === null ? null : { allowancePct, basis, machineAllowancePct };
  }
  const read = lines.map(({ name, pct }) => ({ name: name.trim(), pct: percentOf(pct) }));
  if (read.some(({ pct }) => pct === null)) return null;
  const given = read.flatMap(({ name, pct }) => (pct ? [{ name, pct }] : []));
  const allowancePct = sumOf(given.map(({ pct }) => pct));
  return allowancePct < 100 ? { allowancePct, basis, machineAllowancePct, lines: given } : null;
}

/** Components are added, never compounded; to the hundred-thousandth, so that 0.1 and 0.2 are 0.3. */
function sumOf(shares: readonly number[]): number {
  return Number(shares.reduce((sum, pct) => sum + pct, 0).toFixed(5));
}

/** Nothing typed is no allowance. */
function percentOf(typed: string): number | null {
  if (typed.trim() === '') return 0;
  const pct = parseDecimal(typed);
  return pct !== null && pct < 100 ? pct : null;
}

import { convertAllowance } from '../../statistics/convert-allowance';
import type { AllowanceBasis, AllowanceTerms } from './allowance-terms';

/**
 * The same allowances said on another basis: 15 % of the shift is 17.65 % of normal time. Two standard times are
 * compared only once their allowances stand on one basis.
 */
export function onBasis(terms: AllowanceTerms, basis: AllowanceBasis): AllowanceTerms {
  const convert = (pct: number) => convertAllowance(pct / 100, terms.basis, basis) * 100;
  if (terms.basis === basis) return terms;
  const { lines } = terms;
  return {
    basis,
    allowancePct: convert(terms.allowancePct),
    machineAllowancePct: convert(terms.machineAllowancePct),
    // Shares of one basis do not add up on the other: lines keep their part of the whole.
    ...(lines
      ? {
          lines: lines.map(({ name, pct }) => ({
            name,
            pct: terms.allowancePct > 0 ? (pct / terms.allowancePct) * convert(terms.allowancePct) : 0,
          })),
        }
      : {}),
  };
}

import type { AllowanceTerms } from './allowance-terms';

/** @throws {RangeError} "functionName requires allowances from 0 to below 100 %" */
export function requireTerms(functionName: string, terms: AllowanceTerms): void {
  const fits = (pct: number) => pct >= 0 && pct < 100;
  if (!fits(terms.allowancePct) || !fits(terms.machineAllowancePct)) {
    throw new RangeError(`${functionName} requires allowances from 0 to below 100 %`);
  }
}

import type { AllowanceTerms } from '../../domain/study/allowance-terms';
import type { Bench } from '../bench';

/**
 * Sets the allowances of a study.
 *
 * @throws {RangeError} setAllowances requires allowances from 0 to below 100 %
 */
export function setAllowances(bench: Bench, study: string, terms: AllowanceTerms): void {
  const fits = (pct: number) => pct >= 0 && pct < 100;
  if (!fits(terms.allowancePct) || !fits(terms.machineAllowancePct)) {
    throw new RangeError('setAllowances requires allowances from 0 to below 100 %');
  }
  bench.record(study, [{ kind: 'allowances-set', terms }]);
}

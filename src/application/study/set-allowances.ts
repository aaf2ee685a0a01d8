import type { LogRecord } from '../../domain/records/log-record';
import type { AllowanceTerms } from '../../domain/study/allowance-terms';
import { requireTerms } from '../../domain/study/require-terms';
import type { Study } from '../../domain/study/study';
import type { Bench } from '../bench';

/**
 * Sets the allowances of a study; the earlier ones stay in the log.
 *
 * @throws {RangeError} setAllowances requires allowances from 0 to below 100 %
 */
export function setAllowances(bench: Bench, study: Study, terms: AllowanceTerms): LogRecord[] {
  requireTerms('setAllowances', terms);
  return bench.record(study.id, [{ kind: 'allowances-set', terms }]);
}

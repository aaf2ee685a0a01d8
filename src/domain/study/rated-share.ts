import { allowanceFactor } from '../../statistics/allowance-factor';
import type { StudySummary } from './summarise-study';

/**
 * The share of a standard time that rests on a judged pace: all of it, without a machine. A machine's elements stand at 100
 * and nobody judges them; where its run is the longer branch, work in the run does not enter the time either.
 *
 * Formula: share = 1 − unrated ÷ ST, the sensitivity of ST to one factor on every rated time: ± 5 % on the rating leaves
 *   ± 5 % · share open. Of two branches about equally long only the longer is looked at.
 * Source: ISO/IEC Guide 98-3 (GUM), 5.1.2 and, for the sensitivity, 5.1.3.
 */
export function ratedShare({ elements, terms, machineMs, standardTimeMs, governing }: StudySummary): number {
  if (!standardTimeMs) return 1;
  const allowed = (pct: number) => allowanceFactor(pct / 100, terms.basis);
  const runMs = governing === 'machine' ? machineMs * allowed(terms.machineAllowancePct) : 0;
  const unratedMs = elements.reduce(
    (sum, { elementClass, work, normalPerUnitMs }) =>
      elementClass === 'occasional' && work === 'machine'
        ? sum + normalPerUnitMs! * allowed(terms.allowancePct)
        : sum,
    runMs,
  );
  return 1 - unratedMs / standardTimeMs;
}

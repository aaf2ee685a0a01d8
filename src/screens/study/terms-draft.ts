import type { AllowanceBasis, AllowanceTerms } from '../../domain/study/allowance-terms';

/** Allowances as they are being written. */
export interface TermsDraft {
  readonly allowance: string;
  readonly basis: AllowanceBasis;
  readonly machineAllowance: string;
}

export function draftOfTerms({ allowancePct, basis, machineAllowancePct }: AllowanceTerms): TermsDraft {
  return { allowance: String(allowancePct), basis, machineAllowance: String(machineAllowancePct) };
}

/** The allowances typed, with a point or a comma; null when one is no number from 0 to below 100. */
export function termsOf({ allowance, basis, machineAllowance }: TermsDraft): AllowanceTerms | null {
  const allowancePct = percentOf(allowance);
  const machineAllowancePct = percentOf(machineAllowance);
  if (allowancePct === null || machineAllowancePct === null) return null;
  return { allowancePct, basis, machineAllowancePct };
}

/** Nothing typed is no allowance. */
function percentOf(typed: string): number | null {
  const text = typed.trim().replace(',', '.');
  if (text === '') return 0;
  if (!/^\d{1,2}(\.\d*)?$/.test(text)) return null;
  return Number(text);
}

import type { StudySummary } from '../../domain/study/summarise-study';
import { studyWorking } from '../../i18n/en/study-working';

/** The formula by which a standard time came about: with or without a machine, on its basis. */
export function standardFormula({ machineMs, terms }: StudySummary): string {
  const { symbols, machineSymbols } = studyWorking.standard;
  return machineMs > 0 ? machineSymbols[terms.basis] : symbols[terms.basis];
}

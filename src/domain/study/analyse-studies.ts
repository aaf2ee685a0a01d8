import { meanInterval } from '../../statistics/mean-interval';
import { operatorDayInterval } from '../../statistics/operator-day-interval';
import { totalUncertainty } from '../../statistics/total-uncertainty';
import { groupBy } from '../group-by';
import type { AllowanceTerms } from './allowance-terms';
import { seenFrequency } from './seen-frequency';
import { cycleTimes, FEWEST_FOR_INTERVAL, RATING_UNCERTAINTY } from './study-progress';
import type { StudyRow } from './study-row';
import { type StudySummary, summariseStudy } from './summarise-study';

/** One study of several: its rows, and whose pace on which day. */
export interface StudyInAnalysis {
  readonly id: string;
  readonly title: string;
  readonly operator: string;
  /** As 2026-03-09; empty where a table does not say. */
  readonly day: string;
  readonly rows: readonly StudyRow[];
  /** Occasional elements whose frequency was only seen: their chance is in the uncertainty. */
  readonly seen?: readonly string[];
}

/** A standard from one study or several, and how wide it stands. */
export interface StudiesAnalysis {
  /** All readings of all studies together. */
  readonly together: StudySummary;
  /** Each study alone, under the same allowances. */
  readonly each: readonly StudySummary[];
  readonly cycles: number;
  readonly operators: readonly string[];
  readonly days: readonly string[];
  /** Operator-days: this, not the number of cycles, is what the interval stands on. */
  readonly groups: number;
  /** Half-width of the interval of the cycle, as a share; null when too little was read. */
  readonly sampling: number | null;
  /** Of it, what frequencies that were only seen add, as a share. */
  readonly frequency: number;
  /** With the rating's own uncertainty, and that of frequencies only seen; null likewise. */
  readonly uncertainty: number | null;
}

/**
 * The analysis of studies. Elements are matched by name and every reading counts once. With two operator-days or
 * more the interval is that of the job, from the spread between them; with one it speaks of that morning alone.
 *
 * @throws {RangeError} analyseStudies requires at least one study with a reading
 */
export function analyseStudies(studies: readonly StudyInAnalysis[], terms: AllowanceTerms): StudiesAnalysis {
  const rows = pooledRows(studies, terms);
  if (rows.length === 0) throw new RangeError('analyseStudies requires at least one study with a reading');
  const operatorDays = groupBy(studies, ({ operator, day }) => `${operator} ${day}`);
  const cyclesOf = [...operatorDays.values()]
    .map((own) => own.flatMap((study) => cycleTimes(study.rows)))
    .filter((cycles) => cycles.length > 0);
  const cycles = cyclesOf.flat();
  const sampling = samplingOf(cyclesOf, cycles);
  const together = summariseStudy(rows);
  const frequency = frequencyShare(studies, rows, together);
  return {
    together,
    each: studies.map((study) => summariseStudy(pooledRows([study], terms))),
    cycles: cycles.length,
    operators: distinct(studies.map(({ operator }) => operator)),
    days: distinct(studies.map(({ day }) => day)),
    groups: cyclesOf.length,
    sampling,
    frequency,
    uncertainty:
      sampling === null ? null : totalUncertainty({ sampling, rating: RATING_UNCERTAINTY, frequency }).total,
  };
}

/** The rows of several studies as those of one, under one set of allowances; cycles keep apart. */
export function pooledRows(studies: readonly StudyInAnalysis[], terms: AllowanceTerms): StudyRow[] {
  let before = 0;
  return studies.flatMap(({ rows }) => {
    const first = before;
    before += rows.reduce((most, { cycle }) => Math.max(most, cycle), 0);
    return rows.map((row) => ({
      ...row,
      cycle: first + row.cycle,
      allowancePct: terms.allowancePct,
      allowanceBasis: terms.basis,
      machineAllowancePct: terms.machineAllowancePct,
    }));
  });
}

/** Half the width of the intervals of frequencies that were only seen, as a share of the normal time. */
function frequencyShare(
  studies: readonly StudyInAnalysis[],
  rows: readonly StudyRow[],
  { elements, normalTimeMs }: StudySummary,
): number {
  if (!normalTimeMs) return 0;
  return distinct(studies.flatMap(({ seen = [] }) => seen)).reduce((share, element) => {
    const frequency = seenFrequency(rows, element);
    const normalMs = elements.find((line) => line.element === element)?.normalMeanMs ?? 0;
    if (!frequency) return share;
    return Math.hypot(share, ((frequency.upper - frequency.lower) / 2) * (normalMs / normalTimeMs));
  }, 0);
}

function samplingOf(groups: readonly (readonly number[])[], all: readonly number[]): number | null {
  if (all.length < FEWEST_FOR_INTERVAL || all.every((ms) => ms === 0)) return null;
  const hasSpread = groups.length > 1 && groups.some((cycles) => cycles.length > 1);
  return hasSpread
    ? operatorDayInterval(groups, 0.95).relativeHalfWidth
    : meanInterval(all, 0.95).relativeHalfWidth;
}

function distinct(values: readonly string[]): string[] {
  return [...new Set(values.filter((value) => value !== ''))];
}

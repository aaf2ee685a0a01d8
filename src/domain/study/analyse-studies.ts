import { meanInterval } from '../../statistics/mean-interval';
import { operatorDayInterval } from '../../statistics/operator-day-interval';
import { requiredReadingsIterated } from '../../statistics/required-readings-iterated';
import { studentQuantile } from '../../statistics/student-quantile';
import { totalUncertainty } from '../../statistics/total-uncertainty';
import { groupBy } from '../group-by';
import type { AllowanceTerms } from './allowance-terms';
import { ratedShare } from './rated-share';
import { seenFrequency } from './seen-frequency';
import { cycleTimes, FEWEST_FOR_INTERVAL, RATING_UNCERTAINTY } from './study-progress';
import type { StudyRow } from './study-row';
import { type ElementSummary, type StudySummary, summariseStudy, usualPrecision } from './summarise-study';

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
  /** What the spread of occasional work adds, and how often it comes where that was only seen, as a share. */
  readonly frequency: number;
  /** Occasional elements with too few readings to show a spread: unknown, not none, and in no term. */
  readonly unknownSpread: readonly string[];
  /** The rating's own uncertainty, on the time that was rated, as a share of the whole. */
  readonly rating: number;
  /** t of the operator-days, and about how many of them would reach ± 5 %; null while they are one, or do. */
  readonly moreDays: { readonly t: number; readonly needed: number } | null;
  /** All three together; null where sampling is. */
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
  const frequency = occasionalShare(studies, rows, together);
  const rating = RATING_UNCERTAINTY * ratedShare(together);
  return {
    together,
    each: studies.map((study) => summariseStudy(pooledRows([study], terms))),
    cycles: cycles.length,
    operators: distinct(studies.map(({ operator }) => operator)),
    days: distinct(studies.map(({ day }) => day)),
    groups: cyclesOf.length,
    sampling,
    frequency,
    unknownSpread: together.elements.filter(isOfUnknownSpread).map(({ element }) => element),
    rating,
    moreDays: sampling === null || !hasDays(cyclesOf) ? null : moreDays(sampling, cyclesOf.length),
    uncertainty: sampling === null ? null : totalUncertainty({ sampling, rating, frequency }).total,
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

const isOfUnknownSpread = ({ elementClass, n }: ElementSummary) =>
  elementClass === 'occasional' && n < FEWEST_FOR_INTERVAL;

/** Half the width of the intervals of occasional work, its own and that of how often it was seen, as a share of NT. */
function occasionalShare(
  studies: readonly StudyInAnalysis[],
  rows: readonly StudyRow[],
  { elements, normalTimeMs }: StudySummary,
): number {
  if (!normalTimeMs) return 0;
  const seen = new Set(studies.flatMap((study) => study.seen ?? []));
  return elements.reduce((share, line) => {
    const { element, elementClass, precision, normalPerUnitMs, normalMeanMs } = line;
    if (elementClass !== 'occasional') return share;
    const own = isOfUnknownSpread(line) ? 0 : (precision ?? 0) * (normalPerUnitMs ?? 0);
    const frequency = seen.has(element) ? seenFrequency(rows, element) : null;
    const often = frequency ? ((frequency.upper - frequency.lower) / 2) * (normalMeanMs ?? 0) : 0;
    return Math.hypot(share, own / normalTimeMs, often / normalTimeMs);
  }, 0);
}

function samplingOf(groups: readonly (readonly number[])[], all: readonly number[]): number | null {
  if (all.length < FEWEST_FOR_INTERVAL || all.every((ms) => ms === 0)) return null;
  return hasDays(groups)
    ? operatorDayInterval(groups, 0.95).relativeHalfWidth
    : meanInterval(all, 0.95).relativeHalfWidth;
}

/** Whether operator-days can be compared: two or more, one of them with a spread of its own. */
function hasDays(groups: readonly (readonly number[])[]): boolean {
  return groups.length > 1 && groups.some((cycles) => cycles.length > 1);
}

/** Operator-days as alike as these that reach the precision aimed at: h = t·s ÷ √g, turned round for s. */
function moreDays(sampling: number, groups: number): StudiesAnalysis['moreDays'] {
  const { precision, confidence } = usualPrecision;
  if (sampling <= precision) return null;
  const t = studentQuantile((1 + confidence) / 2, groups - 1);
  const standardDeviation = (sampling * Math.sqrt(groups)) / t;
  return { t, needed: requiredReadingsIterated({ mean: 1, standardDeviation, precision, confidence }) };
}

function distinct(values: readonly string[]): string[] {
  return [...new Set(values.filter((value) => value !== ''))];
}

import { meanInterval } from '../../statistics/mean-interval';
import { observedMean } from '../../statistics/observed-mean';
import { requiredReadingsIterated } from '../../statistics/required-readings-iterated';
import { requiredReadingsNormal } from '../../statistics/required-readings-normal';
import { requiredReadingsPilot } from '../../statistics/required-readings-pilot';
import { requiredReadingsShortForm } from '../../statistics/required-readings-short-form';
import { sampleStandardDeviation } from '../../statistics/sample-standard-deviation';
import { standardTime } from '../../statistics/standard-time';
import { groupBy } from '../group-by';
import type { ElementClass, Placement, WorkKind } from '../shop/element-definition';
import type { AllowanceTerms } from './allowance-terms';
import type { StudyRow } from './study-row';

/** How precise a mean is asked to be, and how sure. Both as fractions: 0.05 and 0.95. */
export interface PrecisionAsked {
  readonly precision: number;
  readonly confidence: number;
}

export const usualPrecision: PrecisionAsked = { precision: 0.05, confidence: 0.95 };

/** One line of the study summary sheet. Null: too few readings to say. */
export interface ElementSummary {
  readonly element: string;
  readonly elementNo: number;
  readonly elementClass: ElementClass;
  readonly work: WorkKind;
  readonly placement: Placement;
  readonly unitsPerOccurrence: number;
  readonly partsPerCycle: number;
  /** Readings used, and left out with a cause. */
  readonly n: number;
  readonly excluded: number;
  readonly observedMeanMs: number | null;
  readonly observedDeviationMs: number | null;
  readonly meanRatingPct: number | null;
  /** Mean of observed × rating/100, per occurrence. */
  readonly normalMeanMs: number | null;
  /** Normal time a work unit: × frequency, ÷ parts per cycle. Nothing for a foreign element. */
  readonly normalPerUnitMs: number | null;
  /** Mean of every reading taken, also those left out: printed beside the other, never used. */
  readonly meanOfAllMs: number | null;
  /** Half-width of the interval on rated times, as a fraction of their mean. */
  readonly precision: number | null;
  readonly required: RequiredReadings | null;
}

/** Readings needed for the precision asked, on observed times, in the forms the handbooks use. */
export interface RequiredReadings {
  readonly t: number;
  readonly tPilot: number;
  readonly z: number;
  readonly ilo: number;
  readonly raw: { readonly tPilot: number; readonly z: number; readonly ilo: number };
}

/** The study summary sheet in figures, times in milliseconds a work unit. */
export interface StudySummary {
  readonly elements: readonly ElementSummary[];
  readonly terms: AllowanceTerms;
  readonly externalMs: number;
  readonly internalMs: number;
  readonly occasionalMs: number;
  readonly machineMs: number;
  /** Null while an element of the job has no usable reading: half a method has no time. */
  readonly normalTimeMs: number | null;
  readonly standardTimeMs: number | null;
  readonly piecesPerHour: number | null;
  readonly governing: 'operator' | 'machine' | null;
}

/**
 * Reduces a study's rows to its summary sheet.
 *
 * NT of an element = mean(observed × rating/100), the mean of products; a work unit takes
 * NT ÷ units per occurrence ÷ parts per cycle. Machine time runs beside internal work, so only the
 * longer of the two enters the sum. An occasional element counts as external, the cautious side.
 *
 * @throws {RangeError} summariseStudy requires at least one row
 */
export function summariseStudy(
  rows: readonly StudyRow[],
  asked: PrecisionAsked = usualPrecision,
): StudySummary {
  const first = rows[0];
  if (!first) throw new RangeError('summariseStudy requires at least one row');
  const elements = byElement(rows).map((own) => summariseElement(own, asked));
  const ofTheJob = elements.filter(({ elementClass }) => elementClass !== 'foreign');
  const complete = ofTheJob.length > 0 && ofTheJob.every(({ normalPerUnitMs }) => normalPerUnitMs !== null);
  const sum = (belongs: (element: ElementSummary) => boolean) =>
    ofTheJob.filter(belongs).reduce((total, { normalPerUnitMs }) => total + (normalPerUnitMs ?? 0), 0);

  const isOccasional = (element: ElementSummary) => element.elementClass === 'occasional';
  const isMachine = (element: ElementSummary) => !isOccasional(element) && element.work === 'machine';
  const byHand = (placement: Placement) => (element: ElementSummary) =>
    !isOccasional(element) && element.work !== 'machine' && element.placement === placement;
  const parts = {
    external: sum(byHand('external')),
    internal: sum(byHand('internal')),
    occasional: sum(isOccasional),
    machine: sum(isMachine),
  };
  const terms: AllowanceTerms = {
    allowancePct: first.allowancePct,
    basis: first.allowanceBasis,
    machineAllowancePct: first.machineAllowancePct,
  };
  const times = complete
    ? standardTime({
        ...parts,
        allowance: terms.allowancePct / 100,
        machineAllowance: terms.machineAllowancePct / 100,
        basis: terms.basis,
      })
    : null;
  return {
    elements,
    terms,
    externalMs: parts.external,
    internalMs: parts.internal,
    occasionalMs: parts.occasional,
    machineMs: parts.machine,
    normalTimeMs: times?.normalTime ?? null,
    standardTimeMs: times?.standardTime ?? null,
    piecesPerHour: times && times.standardTime > 0 ? 3_600_000 / times.standardTime : null,
    governing: times?.governing ?? null,
  };
}

/** Rows of each element, in the order of element number, then of first appearance. */
function byElement(rows: readonly StudyRow[]): StudyRow[][] {
  return [...groupBy(rows, ({ element }) => element).values()].sort(
    (a, b) => a[0]!.elementNo - b[0]!.elementNo,
  );
}

function summariseElement(rows: readonly StudyRow[], asked: PrecisionAsked): ElementSummary {
  const { element, elementNo, elementClass, work, placement, unitsPerOccurrence, partsPerCycle } = rows[0]!;
  const used = rows.filter(({ excluded, observedMs }) => excluded === null && observedMs !== null);
  const observed = used.map(({ observedMs }) => observedMs!);
  const normal = used.map(({ observedMs, ratingPct }) => (observedMs! * ratingPct) / 100);
  const all = rows.flatMap(({ observedMs }) => (observedMs === null ? [] : [observedMs]));
  const n = used.length;
  const normalMeanMs = n > 0 ? observedMean(normal) : null;
  const interval = n > 1 && normalMeanMs! > 0 ? meanInterval(normal, asked.confidence) : null;
  return {
    element,
    elementNo,
    elementClass,
    work,
    placement,
    unitsPerOccurrence,
    partsPerCycle,
    n,
    excluded: rows.length - n,
    observedMeanMs: n > 0 ? observedMean(observed) : null,
    observedDeviationMs: n > 1 ? sampleStandardDeviation(observed) : null,
    meanRatingPct: n > 0 ? observedMean(used.map(({ ratingPct }) => ratingPct)) : null,
    normalMeanMs,
    normalPerUnitMs:
      elementClass === 'foreign'
        ? 0
        : normalMeanMs === null
          ? null
          : normalMeanMs / unitsPerOccurrence / partsPerCycle,
    meanOfAllMs: all.length > 0 ? observedMean(all) : null,
    precision: interval?.relativeHalfWidth ?? null,
    required: requiredReadings(observed, asked),
  };
}

function requiredReadings(observed: readonly number[], asked: PrecisionAsked): RequiredReadings | null {
  if (observed.length < 2) return null;
  const mean = observedMean(observed);
  if (mean <= 0) return null;
  const standardDeviation = sampleStandardDeviation(observed);
  // Where the formulas stop: counts beyond the whole numbers, for a precision no study can reach.
  if (!(standardDeviation / (asked.precision * mean) < 1e6)) return null;
  const from = { mean, standardDeviation, ...asked };
  const pilot = requiredReadingsPilot({ ...from, n: observed.length });
  const normal = requiredReadingsNormal(from);
  const short = requiredReadingsShortForm(observed, asked.precision);
  return {
    t: requiredReadingsIterated(from),
    tPilot: pilot.readings,
    z: normal.readings,
    ilo: short.readings,
    raw: { tPilot: pilot.raw, z: normal.raw, ilo: short.raw },
  };
}

import type { LotFact, LotInside } from '../domain/records/lot-fact';
import type { QuotedDays } from '../domain/records/review-fact';
import type { CellSettings, ShopFact, StopReason } from '../domain/records/shop-fact';
import type { PartSize } from '../domain/records/standard-fact';
import { type StudyFact, type StudyHeading, studyPurposes } from '../domain/records/study-fact';
import {
  type ElementDefinition,
  elementClasses,
  placements,
  workKinds,
} from '../domain/shop/element-definition';
import type { AllowanceLine, AllowanceTerms } from '../domain/study/allowance-terms';
import { frequencySources } from '../domain/study/seen-frequency';
import type { StudyRow } from '../domain/study/study-row';
import type { FieldsByKind } from './backup-fields';
import {
  count,
  exactly,
  type Fields,
  filledText,
  listOf,
  namedTexts,
  notNegative,
  number,
  numberThat,
  oneOf,
  optional,
  orNull,
  positive,
  type Shape,
  text,
  truth,
} from './backup-shape';
import { stopCategory, turnFacts } from './backup-turn-shapes';
import { calendarShape } from './calendar-shape';
import { numberRules } from './table-fault';

const elementClass = oneOf(...elementClasses);
const work = oneOf(...workKinds);
const placement = oneOf(...placements);
const rating = numberThat(numberRules.rating);
const units = numberThat(numberRules.units);
const basis = oneOf('normal_time', 'shift');

const reason = exactly<StopReason>({ id: filledText, label: text, category: stopCategory });

const element = exactly<ElementDefinition>({
  name: text,
  breakPoint: text,
  elementClass,
  work,
  placement,
  unitsPerOccurrence: units,
  driver: optional(text),
});

const size = exactly<PartSize>({ driver: text, value: number });

const allowance = numberThat(numberRules.allowance);
const termFields: Fields<AllowanceTerms> = {
  allowancePct: allowance,
  basis,
  machineAllowancePct: allowance,
  lines: optional(listOf(exactly<AllowanceLine>({ name: text, pct: notNegative }))),
};

/** A share of the shift must leave some of the shift: no standard time could be computed otherwise. */
const terms: Shape = (value) => {
  const where = exactly(termFields)(value);
  if (where !== null) return where;
  const { basis, allowancePct, machineAllowancePct } = value as AllowanceTerms;
  return basis === 'shift' && Math.max(allowancePct, machineAllowancePct) >= 100 ? '.allowancePct' : null;
};

const heading: Fields<StudyHeading> = {
  title: text,
  part: text,
  partCode: text,
  methodRevision: number,
  elements: listOf(element),
  partsPerCycle: positive,
  conditions: text,
  operator: text,
  observer: text,
  personTold: truth,
  terms,
  timing: optional(oneOf('continuous', 'snapback')),
  lanes: optional(oneOf(1, 2)),
  purpose: optional(oneOf(...studyPurposes)),
  agreement: optional(text),
  plan: optional(text),
  plannedCycles: optional(count),
  sizes: optional(listOf(size)),
  clockStepMs: optional(positive),
};

const rowFields = exactly<StudyRow>({
  study: text,
  cycle: count,
  element: text,
  elementNo: count,
  elementClass,
  work,
  placement,
  unitsPerOccurrence: units,
  partsPerCycle: positive,
  observedMs: orNull(notNegative),
  ratingPct: rating,
  excluded: orNull(text),
  allowancePct: allowance,
  allowanceBasis: basis,
  machineAllowancePct: allowance,
  carried: namedTexts,
});

const row: Shape = (value) => {
  const where = rowFields(value);
  if (where !== null) return where;
  const { allowanceBasis, allowancePct, machineAllowancePct } = value as StudyRow;
  return terms({ basis: allowanceBasis, allowancePct, machineAllowancePct });
};

const cell = exactly<CellSettings>({
  arrivalLot: count,
  refillAt: numberThat((value) => Number.isInteger(value) && value >= 0),
  trolley: count,
  partsPerDay: orNull(positive),
  valueAdding: listOf(text),
  putDownWith: text,
  byOther: listOf(text),
  machineReasons: optional(listOf(text)),
  operatorCost: optional(notNegative),
  machineCost: optional(notNegative),
});

const quotedDays = exactly<QuotedDays>({
  freeFrom: text,
  people: positive,
  finish: text,
  latest: orNull(text),
});

const shopFacts: FieldsByKind<ShopFact> = {
  'part-defined': { code: text, name: text },
  'part-described': { part: text, code: text, name: text },
  'part-retired': { part: text, retired: truth },
  'target-set': {
    part: text,
    targetMs: orNull(positive),
    source: oneOf('typed', 'standard', 'takt'),
    study: optional(text),
  },
  'tapping-set': { part: text, tapping: oneOf('each-part', 'start-stop', 'elements') },
  'method-revised': {
    part: text,
    elements: listOf(element),
    partsPerCycle: positive,
    conditions: text,
    inPlace: optional(truth),
  },
  'part-sized': { part: text, sizes: listOf(size) },
  'standard-issued': {
    part: text,
    standardTimeMs: positive,
    normalTimeMs: positive,
    terms,
    methodRevision: notNegative,
    conditions: text,
    studies: listOf(text),
    cycles: count,
    operators: listOf(text),
    days: listOf(text),
    uncertainty: orNull(notNegative),
    inForceOn: text,
    checkBy: text,
    issuedBy: text,
  },
  'person-added': { code: text },
  'person-removed': { code: text },
  'learning-set': { code: text, parts: notNegative },
  'reasons-set': { reasons: listOf(reason) },
  'calendar-set': { calendar: calendarShape },
  'copy-made-outside': {
    how: oneOf('folder', 'shared', 'downloaded'),
    records: notNegative,
    upTo: optional(notNegative),
  },
  'set-up-standard-set': { standardMs: orNull(positive) },
  'day-noted': { day: text, text, isChange: truth, by: text },
  'day-note-removed': { note: text, by: text },
  'comparison-fixed': {
    title: text,
    part: orNull(text),
    beforeFrom: text,
    beforeTo: text,
    afterFrom: text,
    afterTo: text,
    thresholdPct: positive,
    by: text,
  },
  'comparison-withdrawn': { comparison: text, by: text },
  'old-method-timed': {
    part: text,
    perPartMs: positive,
    newPerPartMs: optional(positive),
    source: text,
    by: text,
  },
  'old-timing-removed': { timing: text, by: text },
  'quotation-made': {
    part: text,
    partCode: text,
    quantity: count,
    setUpMs: notNegative,
    perPartMs: positive,
    totalMs: positive,
    lowMs: orNull(notNegative),
    highMs: orNull(notNegative),
    methodRevision: orNull(count),
    study: orNull(text),
    note: text,
    due: optional(quotedDays),
    by: text,
  },
  'quotation-withdrawn': { quotation: text, by: text },
  'people-looked-at': { purpose: text, by: text, fromDay: text, toDay: text },
  'cell-set': { cell },
  'pin-set': { salt: text, iterations: count, hash: text },
  'pin-removed': {},
  'pin-refused': {},
  'pin-accepted': {},
};

const lotInside = exactly<LotInside>({ lot: text, parts: count, arrivedWallMs: notNegative });

const lotFacts: FieldsByKind<LotFact> = {
  'lots-opened': { starts: oneOf('lots'), inside: optional(listOf(lotInside)) },
  'lot-arrived': { parts: count, lot: text },
  'lot-released': { parts: count, lot: text },
};

const studyFacts: FieldsByKind<StudyFact> = {
  'study-started': { starts: oneOf('study'), ...heading },
  'element-ended': { ratingPct: rating, judged: optional(truth) },
  'break-point-missed': { waits: optional(truth) },
  'foreign-began': {},
  'foreign-ended': { description: text },
  'occasional-began': { elementNo: count },
  'occasional-ended': { ratingPct: rating, judged: optional(truth) },
  'element-chosen': { elementNo: count },
  'in-hand-marked': { cause: orNull(text) },
  'machine-ended': {},
  'watch-held': {},
  'watch-went-on': {},
  'in-hand-noted': { note: text },
  'study-ended': {},
  'reading-excluded': { reading: text, cause: text },
  'reading-restored': { reading: text },
  'reading-rated': { reading: text, ratingPct: rating },
  'reading-noted': { reading: text, note: text },
  'allowances-set': { terms },
  'frequency-set': { elementNo: count, unitsPerOccurrence: units, source: oneOf(...frequencySources) },
  'clock-checked': { elapsedMs: positive, beforeMs: notNegative, afterMs: notNegative },
  'study-imported': {
    starts: oneOf('study'),
    study: text,
    fileName: text,
    rows: listOf(row),
    elements: optional(listOf(element)),
    filledIn: optional(listOf(count)),
  },
};

/**
 * What a fact of each kind must hold. Lenient where a figure is only odd, strict where one would break a fold,
 * a figure or a screen.
 */
export const factShapes: ReadonlyMap<string, Shape> = new Map(
  Object.entries({ ...shopFacts, ...turnFacts, ...studyFacts, ...lotFacts }).map(([kind, fields]) => [
    kind,
    exactly({ kind: oneOf(kind), ...fields }),
  ]),
);

/** The kinds that belong into the shop's own stream, and no others do. */
export const shopKinds: ReadonlySet<string> = new Set(Object.keys(shopFacts));

import type { Fact } from '../domain/records/log-record';
import type { LotFact, LotInside } from '../domain/records/lot-fact';
import type { CellSettings, ShopFact, StopReason } from '../domain/records/shop-fact';
import type { StudyFact, StudyHeading } from '../domain/records/study-fact';
import type { PartInHand, StoppedTime, TurnFact } from '../domain/records/turn-fact';
import {
  type ElementDefinition,
  elementClasses,
  placements,
  workKinds,
} from '../domain/shop/element-definition';
import type { WallStretch } from '../domain/shop/shift-calendar';
import type { AllowanceTerms } from '../domain/study/allowance-terms';
import type { StudyRow } from '../domain/study/study-row';
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
import { calendarShape } from './calendar-shape';
import { numberRules } from './table-fault';

/** What a fact of each kind holds beside its kind. A kind that is missing here does not compile. */
type FieldsByKind<Any extends Fact> = {
  readonly [Kind in Any['kind']]: Fields<Omit<Extract<Any, { kind: Kind }>, 'kind'>>;
};

const stopCategory = oneOf('set-up', 'stoppage', 'rework', 'planned-break', 'called-away');
const correctedCategory = oneOf('cycle', 'set-up', 'stoppage', 'rework', 'planned-break', 'called-away');
/** Left out where it was said at the station. */
const by = optional(text);
const stoppedTime = exactly<StoppedTime>({ category: stopCategory, reason: text, label: text });
const workOrStopped: Shape = (value) => (value === 'work' ? null : stoppedTime(value));
const elementClass = oneOf(...elementClasses);
const work = oneOf(...workKinds);
const placement = oneOf(...placements);
const rating = numberThat(numberRules.rating.holds);
const units = numberThat(numberRules.units.holds);
const basis = oneOf('normal_time', 'shift');

const wallStretch = exactly<WallStretch>({ fromWallMs: number, toWallMs: number });

const partInHand: Fields<PartInHand> = {
  part: text,
  partCode: text,
  targetMs: orNull(positive),
  partsPerTap: optional(count),
};

const reason = exactly<StopReason>({ id: filledText, label: text, category: stopCategory });

const element = exactly<ElementDefinition>({
  name: text,
  breakPoint: text,
  elementClass,
  work,
  placement,
  unitsPerOccurrence: units,
});

const allowance = numberThat(numberRules.allowance.holds);
const termFields: Fields<AllowanceTerms> = {
  allowancePct: allowance,
  basis,
  machineAllowancePct: allowance,
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
});

const shopFacts: FieldsByKind<ShopFact> = {
  'part-defined': { code: text, name: text },
  'part-described': { part: text, code: text, name: text },
  'part-retired': { part: text, retired: truth },
  'target-set': {
    part: text,
    targetMs: orNull(positive),
    source: oneOf('typed', 'standard'),
    study: optional(text),
  },
  'method-revised': { part: text, elements: listOf(element), partsPerCycle: positive, conditions: text },
  'person-added': { code: text },
  'person-removed': { code: text },
  'reasons-set': { reasons: listOf(reason) },
  'calendar-set': { calendar: calendarShape },
  'copy-made-outside': { how: oneOf('folder', 'shared', 'downloaded'), records: notNegative },
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
  'old-method-timed': { part: text, perPartMs: positive, source: text, by: text },
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
    by: text,
  },
  'people-looked-at': { purpose: text, by: text, fromDay: text, toDay: text },
  'cell-set': { cell },
  'pin-set': { salt: text, iterations: count, hash: text },
  'pin-removed': {},
  'pin-refused': {},
  'pin-accepted': {},
};

const turnFacts: FieldsByKind<TurnFact> = {
  'turn-started': { starts: oneOf('turn'), person: text, ...partInHand },
  'part-done': { ...partInHand, touchMs: optional(notNegative) },
  'part-changed': { ...partInHand, before: optional(oneOf('asked')) },
  'part-judged': { partDone: text, outcome: oneOf('good', 'rework', 'scrap'), defect: optional(text) },
  stopped: {},
  resumed: {},
  'stoppage-explained': {
    stoppage: text,
    reason: text,
    label: text,
    category: stopCategory,
    ofPart: optional(text),
  },
  'stoppage-absorbed': { stoppage: text, absorbedMs: notNegative, by },
  'turn-ended': {},
  slept: { sleptMs: notNegative },
  'clock-set': { byMs: number },
  'clock-drifted': { byMs: number },
  'page-opened': { goneMs: optional(notNegative) },
  'gap-explained': { gap: text, as: workOrStopped, by },
  'change-explained': {
    change: text,
    as: oneOf('set-up', 'next-part', 'part-before', 'left-out'),
    by,
  },
  'tap-counted': { tap: text, by },
  'tap-left-out': { tap: text, by },
  'cycle-judged': { partDone: text, as: oneOf('one-part', 'two-parts', 'interrupted'), by },
  'part-confirmed': { partDone: text, by },
  'person-confirmed': { gap: text, by },
  'part-recoded': { partDone: listOf(text), ...partInHand, by: text, why: text },
  'person-corrected': {
    person: text,
    fromMs: optional(notNegative),
    toMs: optional(notNegative),
    by: text,
    why: text,
  },
  'time-reclassified': {
    fromMs: notNegative,
    toMs: notNegative,
    category: correctedCategory,
    reason: text,
    label: text,
    by: text,
    why: text,
  },
  'part-set-aside': { partDone: text, cause: text, by: text },
  'part-taken-back': { partDone: text, by: text },
  'person-changed': { person: text },
  'shift-planned': { breaks: listOf(wallStretch), endsWallMs: orNull(number) },
  'break-answered': {
    partDone: text,
    fromMs: notNegative,
    toMs: notNegative,
    as: oneOf('break', 'work'),
    by,
  },
  undone: { of: text },
};

const lotInside = exactly<LotInside>({ lot: text, parts: count, arrivedWallMs: notNegative });

const lotFacts: FieldsByKind<LotFact> = {
  'lots-opened': { starts: oneOf('lots'), inside: optional(listOf(lotInside)) },
  'lot-arrived': { parts: count, lot: text },
  'lot-released': { parts: count, lot: text },
};

const studyFacts: FieldsByKind<StudyFact> = {
  'study-started': { starts: oneOf('study'), ...heading },
  'element-ended': { ratingPct: rating },
  'break-point-missed': {},
  'foreign-began': {},
  'foreign-ended': { description: text },
  'occasional-began': { elementNo: count },
  'occasional-ended': { ratingPct: rating },
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
  'study-imported': { starts: oneOf('study'), study: text, fileName: text, rows: listOf(row) },
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

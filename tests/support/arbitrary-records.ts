import fc from 'fast-check';
import { chainOf } from '../../src/domain/records/chain';
import type { Fact, LogRecord } from '../../src/domain/records/log-record';
import { SHOP_STREAM } from '../../src/domain/records/log-record';
import type { LotFact, LotInside } from '../../src/domain/records/lot-fact';
import type { QuotedDays } from '../../src/domain/records/review-fact';
import type { CellSettings, ShopFact, StopReason } from '../../src/domain/records/shop-fact';
import type { Stamp } from '../../src/domain/records/stamp';
import type { PartSize } from '../../src/domain/records/standard-fact';
import type { EnteredLater, EnteredLine, EnteredStop } from '../../src/domain/records/station-fact';
import { type StudyFact, type StudyHeading, studyPurposes } from '../../src/domain/records/study-fact';
import type { PartInHand, StoppedTime, TurnFact } from '../../src/domain/records/turn-fact';
import type { ElementDefinition } from '../../src/domain/shop/element-definition';
import type {
  DayBreak,
  DayException,
  ShiftCalendar,
  ShiftTimes,
  WallBreak,
  WeeklyShift,
} from '../../src/domain/shop/shift-calendar';
import type { AllowanceLine, AllowanceTerms } from '../../src/domain/study/allowance-terms';
import type { StudyRow } from '../../src/domain/study/study-row';

/** A value for every property, with those that may be left out: one that the type gains is asked for here. */
type Values<Type> = {
  readonly [Name in keyof Type]-?: fc.Arbitrary<
    Record<never, never> extends Pick<Type, Name> ? Type[Name] | undefined : Type[Name]
  >;
};
type ByKind<Any extends Fact> = {
  readonly [Kind in Any['kind']]: Values<Omit<Extract<Any, { kind: Kind }>, 'kind'>>;
};

/** Half of the time left out. */
function perhaps<Type>(value: fc.Arbitrary<Type>): fc.Arbitrary<Type | undefined> {
  return fc.option(value, { nil: undefined });
}

function whole<Type>(values: Values<Type>): fc.Arbitrary<Type> {
  return fc
    .record<Record<string, unknown>>(values as never, { noNullPrototype: true })
    .map(
      (drawn) => Object.fromEntries(Object.entries(drawn).filter(([, value]) => value !== undefined)) as Type,
    );
}

/** Everything a text field may be given: other scripts, quotation marks, control characters, half a character. */
const text = fc.oneof(
  { weight: 4, arbitrary: fc.string({ maxLength: 12 }) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 8 }) },
  { weight: 1, arbitrary: fc.constantFrom('', 'Größe 7½', '"a";b\n', '\u2028', '\ud800', '😀', '__proto__') },
);
const key = fc.string({ unit: fc.constantFrom('t', '-', '1', '7', ':'), minLength: 1, maxLength: 8 });
const few = <Type>(of: fc.Arbitrary<Type>) => fc.array(of, { maxLength: 3 });
const texts = few(text);
const ms = fc.oneof(fc.nat(200_000), fc.constantFrom(0, 0.5, 1 / 3, 1e9));
const longer = fc.integer({ min: 1, max: 90_000_000 });
const targetMs = fc.option(longer);
const ratingPct = fc.oneof(fc.integer({ min: 1, max: 200 }), fc.constant(112.5));
const number = fc.integer({ min: 1, max: 9 });
const by = perhaps(text);
const clockStepMs = perhaps(fc.constantFrom(16.7, 100));
const judged = perhaps(fc.boolean());
const yes = perhaps(fc.constant(true as const));
const inHand: Values<PartInHand> = {
  part: key,
  partCode: text,
  targetMs,
  partsPerTap: perhaps(fc.constantFrom(2, 4)),
  targetSource: perhaps(fc.constantFrom('typed', 'standard', 'takt')),
  tapping: perhaps(fc.constantFrom('start-stop', 'elements')),
  elements: perhaps(texts),
};
const category = fc.constantFrom('set-up', 'stoppage', 'rework', 'planned-break', 'called-away');
const stopped: Values<StoppedTime> = { category, reason: text, label: text };

/** Parts of a lot. */
const lot = fc.integer({ min: 1, max: 400 });
const kinds = {
  elementClass: fc.constantFrom('repetitive', 'occasional', 'foreign'),
  work: fc.constantFrom('manual', 'machine', 'walking', 'attention'),
  placement: fc.constantFrom('external', 'internal'),
} as const;
const element = whole<ElementDefinition>({
  name: text,
  breakPoint: text,
  ...kinds,
  unitsPerOccurrence: fc.integer({ min: 1, max: 500 }),
  driver: perhaps(text),
});
const basis = fc.constantFrom('normal_time', 'shift');
const terms = whole<AllowanceTerms>({
  allowancePct: fc.constantFrom(0, 12.5, 15),
  basis,
  machineAllowancePct: fc.constantFrom(0, 5),
  lines: perhaps(few(whole<AllowanceLine>({ name: text, pct: fc.constantFrom(0, 2.5, 4) }))),
});
const sizes = few(
  // JSON has no negative nought: a file gives back 0.
  whole<PartSize>({
    driver: text,
    value: fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => value + 0),
  }),
);
const row = whole<StudyRow>({
  study: text,
  cycle: fc.integer({ min: 1, max: 99 }),
  element: text,
  elementNo: number,
  ...kinds,
  unitsPerOccurrence: fc.constantFrom(1, 10, 0.5),
  partsPerCycle: fc.constantFrom(1, 4),
  observedMs: fc.option(ms),
  ratingPct,
  excluded: fc.option(text),
  allowancePct: fc.constantFrom(0, 15),
  allowanceBasis: basis,
  machineAllowancePct: fc.constantFrom(0, 5),
  carried: fc.dictionary(
    text.filter((name) => name !== '__proto__'),
    text,
    { maxKeys: 3, noNullPrototype: true },
  ),
});
const heading: Values<StudyHeading> = {
  title: text,
  part: key,
  partCode: text,
  methodRevision: fc.nat(9),
  elements: few(element),
  partsPerCycle: number,
  conditions: text,
  operator: text,
  observer: text,
  personTold: fc.boolean(),
  terms,
  timing: perhaps(fc.constantFrom('continuous', 'snapback')),
  lanes: perhaps(fc.constantFrom(1, 2)),
  purpose: perhaps(fc.constantFrom(...studyPurposes)),
  agreement: perhaps(text),
  plan: perhaps(text),
  plannedCycles: perhaps(number),
  sizes: perhaps(sizes),
  clockStepMs,
};

const minute = fc.integer({ min: 0, max: 1_439 });
const times: Values<ShiftTimes> = {
  fromMin: minute,
  toMin: minute,
  breaks: few(whole<DayBreak>({ fromMin: minute, toMin: minute, isAttended: perhaps(fc.boolean()) })),
};
const calendar = whole<ShiftCalendar>({
  shifts: few(whole<WeeklyShift>({ name: text, weekdays: fc.subarray([1, 2, 3, 4, 5, 6, 7]), ...times })),
  exceptions: few(
    whole<DayException>({
      day: fc.constantFrom('2026-12-24', '2026-02-28'),
      shifts: few(whole<ShiftTimes>(times)),
    }),
  ),
});

const shopFacts: ByKind<ShopFact> = {
  'part-defined': { code: text, name: text },
  'part-described': { part: key, code: text, name: text },
  'part-retired': { part: key, retired: fc.boolean() },
  'target-set': {
    part: key,
    targetMs,
    source: fc.constantFrom('typed', 'standard', 'takt'),
    study: perhaps(key),
  },
  'tapping-set': { part: key, tapping: fc.constantFrom('each-part', 'start-stop', 'elements') },
  'method-revised': {
    part: key,
    elements: few(element),
    partsPerCycle: number,
    conditions: text,
    inPlace: yes,
  },
  'part-sized': { part: key, sizes },
  'standard-issued': {
    part: key,
    standardTimeMs: longer,
    normalTimeMs: longer,
    terms,
    methodRevision: fc.nat(9),
    conditions: text,
    studies: few(key),
    cycles: number,
    operators: texts,
    days: texts,
    uncertainty: fc.option(fc.constantFrom(0.02, 0.1)),
    inForceOn: text,
    checkBy: text,
    issuedBy: text,
  },
  'person-added': { code: text },
  'person-removed': { code: text },
  'learning-set': { code: text, parts: fc.nat(200) },
  'reasons-set': { reasons: few(whole<StopReason>({ id: key, label: text, category })) },
  'calendar-set': { calendar },
  'copy-made-outside': {
    how: fc.constantFrom('folder', 'shared', 'downloaded'),
    records: fc.nat(1_000_000),
    upTo: perhaps(fc.nat(1_000_000)),
  },
  'set-up-standard-set': { standardMs: targetMs },
  'day-noted': { day: text, text, isChange: fc.boolean(), by: text },
  'day-note-removed': { note: key, by: text },
  'comparison-fixed': {
    title: text,
    part: fc.option(key),
    beforeFrom: text,
    beforeTo: text,
    afterFrom: text,
    afterTo: text,
    thresholdPct: fc.constantFrom(5, 12.5),
    by: text,
  },
  'comparison-withdrawn': { comparison: key, by: text },
  'old-method-timed': {
    part: key,
    perPartMs: longer,
    newPerPartMs: perhaps(longer),
    source: text,
    by: text,
  },
  'old-timing-removed': { timing: key, by: text },
  'quotation-withdrawn': { quotation: key, by: text },
  'quotation-made': {
    part: key,
    partCode: text,
    quantity: fc.integer({ min: 1, max: 9_999 }),
    setUpMs: ms,
    perPartMs: longer,
    totalMs: longer,
    lowMs: fc.option(ms),
    highMs: fc.option(ms),
    methodRevision: fc.option(number),
    study: fc.option(key),
    note: text,
    due: perhaps(
      whole<QuotedDays>({ freeFrom: text, people: number, finish: text, latest: fc.option(text) }),
    ),
    by: text,
  },
  'people-looked-at': { purpose: text, by: text, fromDay: text, toDay: text },
  'cell-set': {
    cell: whole<CellSettings>({
      arrivalLot: lot,
      refillAt: fc.nat(40),
      trolley: lot,
      partsPerDay: fc.option(lot),
      valueAdding: texts,
      putDownWith: text,
      byOther: texts,
      machineReasons: perhaps(texts),
      operatorCost: perhaps(fc.constantFrom(0, 31.5, 60)),
      machineCost: perhaps(fc.constantFrom(0, 12.75, 90)),
    }),
  },
  'pin-set': {
    salt: fc.constant('00ff'),
    iterations: fc.constant(600_000),
    hash: fc.constant('abcd'),
  },
  'pin-removed': {},
  'pin-refused': {},
  'pin-accepted': {},
};

const turnFacts: ByKind<TurnFact> = {
  'turn-started': {
    starts: fc.constant('turn'),
    person: text,
    ...inHand,
    enteredLater: perhaps(
      whole<EnteredLater>({
        at: fc.constant({ run: 'r', monoMs: 1, wallMs: 2, zone: 'UTC', offsetMin: 0 }),
        by: text,
        why: text,
        lastedMs: ms,
        lines: few(whole<EnteredLine>({ ...inHand, done: fc.nat(40), rework: fc.nat(2), scrap: fc.nat(2) })),
        stops: few(whole<EnteredStop>({ ...stopped, lostMs: ms, fromMs: perhaps(ms) })),
      }),
    ),
    clockStepMs,
  },
  'part-done': { ...inHand, touchMs: perhaps(ms) },
  'part-changed': { ...inHand, before: perhaps(fc.constant('asked' as const)) },
  'part-begun': {},
  'element-done': { element: text },
  'parts-wanted': { parts: fc.option(number) },
  'part-judged': {
    partDone: key,
    outcome: fc.constantFrom('good', 'rework', 'scrap'),
    defect: perhaps(text),
    stoppage: perhaps(key),
  },
  stopped: {},
  resumed: {},
  'stoppage-explained': { stoppage: key, ...stopped, ofPart: perhaps(key), by, why: by },
  'stoppage-absorbed': { stoppage: key, absorbedMs: ms, by },
  'turn-ended': {},
  slept: { sleptMs: ms },
  'clock-set': { byMs: fc.integer() },
  'clock-drifted': { byMs: fc.integer() },
  'page-opened': { goneMs: perhaps(ms) },
  'gap-explained': {
    gap: key,
    as: fc.oneof(fc.constant('work' as const), whole<StoppedTime>(stopped)),
    by,
  },
  'change-explained': {
    change: key,
    as: fc.constantFrom('set-up', 'next-part', 'part-before', 'left-out'),
    by,
  },
  'tap-counted': { tap: key, by },
  'tap-left-out': { tap: key, by },
  'cycle-judged': {
    partDone: key,
    as: fc.constantFrom('one-part', 'two-parts', 'interrupted', 'first-off'),
    by,
  },
  'part-confirmed': { partDone: key, by },
  'person-confirmed': { gap: key, by },
  'part-recoded': { partDone: few(key), ...inHand, by: text, why: text },
  'person-corrected': { person: text, fromMs: perhaps(ms), toMs: perhaps(ms), by: text, why: text },
  'learning-noted': { person: text, parts: fc.nat(200) },
  'turn-noted': { note: text },
  'turn-withdrawn': { by: text, why: text },
  'parts-counted': { count: fc.nat(500), by },
  'person-changed': { person: text },
  'shift-planned': {
    breaks: few(whole<WallBreak>({ fromWallMs: ms, toWallMs: ms, isAttended: perhaps(fc.boolean()) })),
    endsWallMs: fc.option(ms),
  },
  'break-answered': {
    partDone: key,
    fromMs: ms,
    toMs: ms,
    as: fc.constantFrom('break', 'work'),
    by,
  },
  'time-reclassified': {
    fromMs: ms,
    toMs: ms,
    category: fc.oneof(category, fc.constant('cycle' as const)),
    reason: text,
    label: text,
    by: text,
    why: text,
    isAtStation: perhaps(fc.boolean()),
  },
  'part-set-aside': { partDone: key, cause: text, by: text },
  'part-taken-back': { partDone: key, by: text },
  undone: { of: key, by },
};

const lotFacts: ByKind<LotFact> = {
  'lots-opened': {
    starts: fc.constant('lots'),
    inside: perhaps(few(whole<LotInside>({ lot: text, parts: lot, arrivedWallMs: ms }))),
  },
  'lot-arrived': { parts: lot, lot: text },
  'lot-released': { parts: lot, lot: text },
};

const studyFacts: ByKind<StudyFact> = {
  'study-started': { starts: fc.constant('study'), ...heading },
  'element-ended': { ratingPct, judged },
  'break-point-missed': { waits: yes },
  'foreign-began': {},
  'foreign-ended': { description: text },
  'occasional-began': { elementNo: number },
  'occasional-ended': { ratingPct, judged },
  'element-chosen': { elementNo: number },
  'in-hand-marked': { cause: fc.option(text) },
  'machine-ended': {},
  'watch-held': {},
  'watch-went-on': {},
  'in-hand-noted': { note: text },
  'study-ended': {},
  'reading-excluded': { reading: key, cause: text },
  'reading-restored': { reading: key },
  'reading-rated': { reading: key, ratingPct },
  'reading-noted': { reading: key, note: text },
  'allowances-set': { terms },
  'frequency-set': {
    elementNo: number,
    unitsPerOccurrence: fc.integer({ min: 1, max: 99 }),
    source: fc.constantFrom('method', 'record', 'observed'),
  },
  'clock-checked': { elapsedMs: longer, beforeMs: ms, afterMs: ms },
  'study-imported': {
    starts: fc.constant('study'),
    study: text,
    fileName: text,
    rows: few(row),
    elements: perhaps(few(element)),
    filledIn: perhaps(few(number)),
  },
};

const shopKinds: readonly string[] = Object.keys(shopFacts);
const arbitraryFact: fc.Arbitrary<Fact> = fc.oneof(
  ...Object.entries<Values<object>>({ ...shopFacts, ...turnFacts, ...studyFacts, ...lotFacts }).map(
    ([kind, values]) => whole<Fact>({ kind: fc.constant(kind), ...values } as Values<Fact>),
  ),
);

const arbitraryMoment = fc.record({
  monoMs: fc.nat(90_000_000),
  wallMs: fc.integer({ min: 0, max: 4_102_444_800_000 }),
  offsetMin: fc.constantFrom(0, 60, -210, 345),
});

/** Records of one device, numbered and chained as a tablet writes them. */
function arbitraryDevice(device: string): fc.Arbitrary<LogRecord[]> {
  return fc.array(fc.tuple(arbitraryFact, arbitraryMoment), { maxLength: 14 }).map((facts) => {
    let chain = 0;
    let open = `${device}:1`;
    return facts.map(([fact, moment], place) => {
      const own = `${device}:${place + 1}`;
      if ('starts' in fact) open = own;
      const stream = shopKinds.includes(fact.kind) ? SHOP_STREAM : open;
      const stamp: Stamp = { run: 'run-1', zone: 'Europe/Berlin', ...moment };
      const record = { device, sequence: place + 1, stream, stamp, fact };
      chain = chainOf(record, chain);
      return { ...record, chain };
    });
  });
}

/**
 * The whole log of a shop with up to three tablets, by device and sequence. The facts are of every kind and of
 * every shape a record may have; they need not make sense together.
 */
export const arbitraryShop: fc.Arbitrary<LogRecord[]> = fc
  .tuple(arbitraryDevice('tablet-1'), arbitraryDevice('tablet-7k'), arbitraryDevice('Tab_2'))
  .map(([first, second, third]) => [...third, ...first, ...second]);

import fc from 'fast-check';
import { chainOf } from '../../src/domain/records/chain';
import type { Fact, LogRecord } from '../../src/domain/records/log-record';
import { SHOP_STREAM } from '../../src/domain/records/log-record';
import type { LotFact } from '../../src/domain/records/lot-fact';
import type { ShopFact } from '../../src/domain/records/shop-fact';
import type { Stamp } from '../../src/domain/records/stamp';
import type { StudyFact } from '../../src/domain/records/study-fact';
import type { TurnFact } from '../../src/domain/records/turn-fact';

type ByKind<Any extends Fact> = {
  readonly [Kind in Any['kind']]: fc.Arbitrary<Extract<Any, { kind: Kind }>>;
};

/** Everything a text field may be given: other scripts, quotation marks, control characters, half a character. */
const text = fc.oneof(
  { weight: 4, arbitrary: fc.string({ maxLength: 12 }) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 8 }) },
  { weight: 1, arbitrary: fc.constantFrom('', 'Größe 7½', '"a";b\n', '\u2028', '\ud800', '😀', '__proto__') },
);
const key = fc.string({ unit: fc.constantFrom('t', '-', '1', '7', ':'), minLength: 1, maxLength: 8 });
const ms = fc.oneof(fc.nat(200_000), fc.constantFrom(0, 0.5, 1 / 3, 1e9));
const targetMs = fc.option(fc.integer({ min: 1, max: 90_000_000 }));
const ratingPct = fc.oneof(fc.integer({ min: 1, max: 200 }), fc.constant(112.5));
const partsPerTap = fc.constantFrom(2, 4);
const inHand = { part: key, partCode: text, targetMs };
const empty = <Kind extends string>(kind: Kind) => fc.constant({ kind });
const category = fc.constantFrom('set-up', 'stoppage', 'rework', 'planned-break', 'called-away');

/** Parts of a lot. */
const lot = fc.integer({ min: 1, max: 400 });
const element = fc.record({
  name: text,
  breakPoint: text,
  elementClass: fc.constantFrom('repetitive', 'occasional', 'foreign'),
  work: fc.constantFrom('manual', 'machine', 'walking', 'attention'),
  placement: fc.constantFrom('external', 'internal'),
  unitsPerOccurrence: fc.integer({ min: 1, max: 500 }),
});
const terms = fc.record({
  allowancePct: fc.constantFrom(0, 12.5, 15),
  basis: fc.constantFrom('normal_time', 'shift'),
  machineAllowancePct: fc.constantFrom(0, 5),
});
const row = fc.record({
  study: text,
  cycle: fc.integer({ min: 1, max: 99 }),
  element: text,
  elementNo: fc.integer({ min: 1, max: 9 }),
  elementClass: fc.constantFrom('repetitive', 'occasional', 'foreign'),
  work: fc.constantFrom('manual', 'machine', 'walking', 'attention'),
  placement: fc.constantFrom('external', 'internal'),
  unitsPerOccurrence: fc.constantFrom(1, 10, 0.5),
  partsPerCycle: fc.constantFrom(1, 4),
  observedMs: fc.option(ms),
  ratingPct,
  excluded: fc.option(text),
  allowancePct: fc.constantFrom(0, 15),
  allowanceBasis: fc.constantFrom('normal_time', 'shift'),
  machineAllowancePct: fc.constantFrom(0, 5),
  carried: fc.dictionary(
    text.filter((name) => name !== '__proto__'),
    text,
    { maxKeys: 3, noNullPrototype: true },
  ),
});

const minute = fc.integer({ min: 0, max: 1_439 });
const weekdays = fc.subarray([1, 2, 3, 4, 5, 6, 7]);
const breaks = fc.array(fc.record({ fromMin: minute, toMin: minute }), { maxLength: 2 });
const exceptionShifts = fc.array(fc.record({ fromMin: minute, toMin: minute, breaks }), { maxLength: 2 });
const day = fc.constantFrom('2026-12-24', '2026-02-28');

const shopFacts: ByKind<ShopFact> = {
  'part-defined': fc.record({ kind: fc.constant('part-defined'), code: text, name: text }),
  'part-described': fc.record({ kind: fc.constant('part-described'), part: key, code: text, name: text }),
  'part-retired': fc.record({ kind: fc.constant('part-retired'), part: key, retired: fc.boolean() }),
  'target-set': fc.record(
    {
      kind: fc.constant('target-set'),
      part: key,
      targetMs,
      source: fc.constantFrom('typed', 'standard', 'takt'),
      study: key,
    },
    { requiredKeys: ['kind', 'part', 'targetMs', 'source'], noNullPrototype: true },
  ),
  'tapping-set': fc.record({
    kind: fc.constant('tapping-set'),
    part: key,
    tapping: fc.constantFrom('each-part', 'start-stop', 'elements'),
  }),
  'method-revised': fc.record({
    kind: fc.constant('method-revised'),
    part: key,
    elements: fc.array(element, { maxLength: 3 }),
    partsPerCycle: fc.integer({ min: 1, max: 9 }),
    conditions: text,
  }),
  'part-sized': fc.record({
    kind: fc.constant('part-sized'),
    part: key,
    sizes: fc.array(fc.record({ driver: text, value: fc.double({ noNaN: true, noDefaultInfinity: true }) }), {
      maxLength: 2,
    }),
  }),
  'standard-issued': fc.record({
    kind: fc.constant('standard-issued'),
    part: key,
    standardTimeMs: fc.integer({ min: 1, max: 1_000_000 }),
    normalTimeMs: fc.integer({ min: 1, max: 1_000_000 }),
    terms,
    methodRevision: fc.nat(9),
    conditions: text,
    studies: fc.array(key, { maxLength: 2 }),
    cycles: fc.integer({ min: 1, max: 99 }),
    operators: fc.array(text, { maxLength: 2 }),
    days: fc.array(text, { maxLength: 2 }),
    uncertainty: fc.option(fc.constantFrom(0.02, 0.1)),
    inForceOn: text,
    checkBy: text,
    issuedBy: text,
  }),
  'person-added': fc.record({ kind: fc.constant('person-added'), code: text }),
  'person-removed': fc.record({ kind: fc.constant('person-removed'), code: text }),
  'learning-set': fc.record({ kind: fc.constant('learning-set'), code: text, parts: fc.nat(200) }),
  'reasons-set': fc.record({
    kind: fc.constant('reasons-set'),
    reasons: fc.array(fc.record({ id: key, label: text, category }), { maxLength: 3 }),
  }),
  'calendar-set': fc.record({
    kind: fc.constant('calendar-set'),
    calendar: fc.record({
      shifts: fc.array(fc.record({ name: text, weekdays, fromMin: minute, toMin: minute, breaks }), {
        maxLength: 3,
      }),
      exceptions: fc.array(fc.record({ day, shifts: exceptionShifts }), { maxLength: 3 }),
    }),
  }),
  'copy-made-outside': fc.record({
    kind: fc.constant('copy-made-outside'),
    how: fc.constantFrom('folder', 'shared', 'downloaded'),
    records: fc.nat(1_000_000),
  }),
  'set-up-standard-set': fc.record({ kind: fc.constant('set-up-standard-set'), standardMs: targetMs }),
  'day-noted': fc.record({
    kind: fc.constant('day-noted'),
    day: text,
    text,
    isChange: fc.boolean(),
    by: text,
  }),
  'day-note-removed': fc.record({ kind: fc.constant('day-note-removed'), note: key, by: text }),
  'comparison-fixed': fc.record({
    kind: fc.constant('comparison-fixed'),
    title: text,
    part: fc.option(key),
    beforeFrom: text,
    beforeTo: text,
    afterFrom: text,
    afterTo: text,
    thresholdPct: fc.constantFrom(5, 12.5),
    by: text,
  }),
  'comparison-withdrawn': fc.record({ kind: fc.constant('comparison-withdrawn'), comparison: key, by: text }),
  'old-method-timed': fc.record({
    kind: fc.constant('old-method-timed'),
    part: key,
    perPartMs: fc.integer({ min: 1, max: 90_000_000 }),
    source: text,
    by: text,
  }),
  'old-timing-removed': fc.record({ kind: fc.constant('old-timing-removed'), timing: key, by: text }),
  'quotation-withdrawn': fc.record({ kind: fc.constant('quotation-withdrawn'), quotation: key, by: text }),
  'quotation-made': fc.record({
    kind: fc.constant('quotation-made'),
    part: key,
    partCode: text,
    quantity: fc.integer({ min: 1, max: 9_999 }),
    setUpMs: ms,
    perPartMs: fc.integer({ min: 1, max: 90_000_000 }),
    totalMs: fc.integer({ min: 1, max: 90_000_000 }),
    lowMs: fc.option(ms),
    highMs: fc.option(ms),
    methodRevision: fc.option(fc.integer({ min: 1, max: 9 })),
    study: fc.option(key),
    note: text,
    by: text,
  }),
  'people-looked-at': fc.record({
    kind: fc.constant('people-looked-at'),
    purpose: text,
    by: text,
    fromDay: text,
    toDay: text,
  }),
  'cell-set': fc.record({
    kind: fc.constant('cell-set'),
    cell: fc.record(
      {
        arrivalLot: lot,
        refillAt: fc.nat(40),
        trolley: lot,
        partsPerDay: fc.option(lot),
        valueAdding: fc.array(text, { maxLength: 2 }),
        putDownWith: text,
        byOther: fc.array(text, { maxLength: 2 }),
        machineReasons: fc.array(text, { maxLength: 2 }),
        operatorCost: fc.constantFrom(0, 31.5, 60),
        machineCost: fc.constantFrom(0, 12.75, 90),
      },
      {
        requiredKeys: [
          'arrivalLot',
          'refillAt',
          'trolley',
          'partsPerDay',
          'valueAdding',
          'putDownWith',
          'byOther',
        ],
        noNullPrototype: true,
      },
    ),
  }),
  'pin-set': fc.record({
    kind: fc.constant('pin-set'),
    salt: fc.constant('00ff'),
    iterations: fc.constant(600_000),
    hash: fc.constant('abcd'),
  }),
  'pin-removed': empty('pin-removed'),
  'pin-refused': empty('pin-refused'),
  'pin-accepted': empty('pin-accepted'),
};

const tapped = {
  targetSource: fc.constantFrom('typed', 'standard', 'takt'),
  tapping: fc.constantFrom('start-stop', 'elements'),
  elements: fc.array(text, { maxLength: 3 }),
} as const;

const turnFacts: ByKind<TurnFact> = {
  'turn-started': fc.record(
    {
      kind: fc.constant('turn-started'),
      starts: fc.constant('turn'),
      person: text,
      ...inHand,
      enteredLater: fc.record({
        at: fc.constant({ run: 'r', monoMs: 1, wallMs: 2, zone: 'UTC', offsetMin: 0 }),
        by: text,
        why: text,
        lastedMs: ms,
        lines: fc.array(fc.record({ ...inHand, done: fc.nat(40), rework: fc.nat(2), scrap: fc.nat(2) }), {
          maxLength: 2,
        }),
        stops: fc.array(
          fc.record(
            { category, reason: text, label: text, lostMs: ms, fromMs: ms },
            { requiredKeys: ['category', 'reason', 'label', 'lostMs'], noNullPrototype: true },
          ),
          { maxLength: 2 },
        ),
      }),
    },
    { requiredKeys: ['kind', 'starts', 'person', 'part', 'partCode', 'targetMs'], noNullPrototype: true },
  ),
  'part-done': fc.record(
    { kind: fc.constant('part-done'), ...inHand, partsPerTap, touchMs: ms },
    { requiredKeys: ['kind', 'part', 'partCode', 'targetMs'], noNullPrototype: true },
  ),
  'part-changed': fc.record(
    { kind: fc.constant('part-changed'), ...inHand, ...tapped, before: fc.constant('asked') },
    { requiredKeys: ['kind', 'part', 'partCode', 'targetMs'], noNullPrototype: true },
  ),
  'part-begun': empty('part-begun'),
  'element-done': fc.record({ kind: fc.constant('element-done'), element: text }),
  'parts-wanted': fc.record({
    kind: fc.constant('parts-wanted'),
    parts: fc.option(fc.integer({ min: 1, max: 99 })),
  }),
  'part-judged': fc.record(
    {
      kind: fc.constant('part-judged'),
      partDone: key,
      outcome: fc.constantFrom('good', 'rework', 'scrap'),
      defect: text,
    },
    { requiredKeys: ['kind', 'partDone', 'outcome'], noNullPrototype: true },
  ),
  stopped: empty('stopped'),
  resumed: empty('resumed'),
  'stoppage-explained': fc.record(
    {
      kind: fc.constant('stoppage-explained'),
      stoppage: key,
      reason: text,
      label: text,
      category,
      ofPart: key,
    },
    { requiredKeys: ['kind', 'stoppage', 'reason', 'label', 'category'], noNullPrototype: true },
  ),
  'stoppage-absorbed': fc.record(
    { kind: fc.constant('stoppage-absorbed'), stoppage: key, absorbedMs: ms, by: text },
    { requiredKeys: ['kind', 'stoppage', 'absorbedMs'], noNullPrototype: true },
  ),
  'turn-ended': empty('turn-ended'),
  slept: fc.record({ kind: fc.constant('slept'), sleptMs: ms }),
  'clock-set': fc.record({ kind: fc.constant('clock-set'), byMs: fc.integer() }),
  'clock-drifted': fc.record({ kind: fc.constant('clock-drifted'), byMs: fc.integer() }),
  'page-opened': fc.record(
    { kind: fc.constant('page-opened'), goneMs: ms },
    { requiredKeys: ['kind'], noNullPrototype: true },
  ),
  'gap-explained': fc.record({
    kind: fc.constant('gap-explained'),
    gap: key,
    as: fc.oneof(fc.constant('work' as const), fc.record({ category, reason: text, label: text })),
  }),
  'change-explained': fc.record({
    kind: fc.constant('change-explained'),
    change: key,
    as: fc.constantFrom('set-up', 'next-part', 'part-before', 'left-out'),
    by: text,
  }),
  'tap-counted': fc.record({ kind: fc.constant('tap-counted'), tap: key, by: text }),
  'tap-left-out': fc.record({ kind: fc.constant('tap-left-out'), tap: key }),
  'cycle-judged': fc.record({
    kind: fc.constant('cycle-judged'),
    partDone: key,
    as: fc.constantFrom('one-part', 'two-parts', 'interrupted', 'first-off'),
    by: text,
  }),
  'part-confirmed': fc.record({ kind: fc.constant('part-confirmed'), partDone: key }),
  'person-confirmed': fc.record({ kind: fc.constant('person-confirmed'), gap: key }),
  'part-recoded': fc.record({
    kind: fc.constant('part-recoded'),
    partDone: fc.array(key, { maxLength: 3 }),
    ...inHand,
    by: text,
    why: text,
  }),
  'person-corrected': fc.record(
    { kind: fc.constant('person-corrected'), person: text, fromMs: ms, toMs: ms, by: text, why: text },
    { requiredKeys: ['kind', 'person', 'by', 'why'], noNullPrototype: true },
  ),
  'learning-noted': fc.record({
    kind: fc.constant('learning-noted'),
    person: text,
    parts: fc.nat(200),
  }),
  'turn-noted': fc.record({ kind: fc.constant('turn-noted'), note: text }),
  'turn-withdrawn': fc.record({ kind: fc.constant('turn-withdrawn'), by: text, why: text }),
  'parts-counted': fc.record({ kind: fc.constant('parts-counted'), count: fc.nat(500), by: text }),
  'person-changed': fc.record({ kind: fc.constant('person-changed'), person: text }),
  'shift-planned': fc.record({
    kind: fc.constant('shift-planned'),
    breaks: fc.array(fc.record({ fromWallMs: ms, toWallMs: ms }), { maxLength: 3 }),
    endsWallMs: fc.option(ms),
  }),
  'break-answered': fc.record({
    kind: fc.constant('break-answered'),
    partDone: key,
    fromMs: ms,
    toMs: ms,
    as: fc.constantFrom('break', 'work'),
    by: text,
  }),
  'time-reclassified': fc.record({
    kind: fc.constant('time-reclassified'),
    fromMs: ms,
    toMs: ms,
    category,
    reason: text,
    label: text,
    by: text,
    why: text,
  }),
  'part-set-aside': fc.record({ kind: fc.constant('part-set-aside'), partDone: key, cause: text, by: text }),
  'part-taken-back': fc.record({ kind: fc.constant('part-taken-back'), partDone: key, by: text }),
  undone: fc.record({ kind: fc.constant('undone'), of: key }),
};

const lotFacts: ByKind<LotFact> = {
  'lots-opened': fc.record(
    {
      kind: fc.constant('lots-opened'),
      starts: fc.constant('lots'),
      inside: fc.array(fc.record({ lot: text, parts: lot, arrivedWallMs: ms }), { maxLength: 2 }),
    },
    { requiredKeys: ['kind', 'starts'], noNullPrototype: true },
  ),
  'lot-arrived': fc.record({ kind: fc.constant('lot-arrived'), parts: lot, lot: text }),
  'lot-released': fc.record({ kind: fc.constant('lot-released'), parts: lot, lot: text }),
};

const studyFacts: ByKind<StudyFact> = {
  'study-started': fc.record({
    kind: fc.constant('study-started'),
    starts: fc.constant('study'),
    title: text,
    part: key,
    partCode: text,
    methodRevision: fc.nat(9),
    elements: fc.array(element, { maxLength: 3 }),
    partsPerCycle: fc.integer({ min: 1, max: 9 }),
    conditions: text,
    operator: text,
    observer: text,
    personTold: fc.boolean(),
    terms,
  }),
  'element-ended': fc.record({ kind: fc.constant('element-ended'), ratingPct }),
  'break-point-missed': empty('break-point-missed'),
  'foreign-began': empty('foreign-began'),
  'foreign-ended': fc.record({ kind: fc.constant('foreign-ended'), description: text }),
  'occasional-began': fc.record({
    kind: fc.constant('occasional-began'),
    elementNo: fc.integer({ min: 1, max: 9 }),
  }),
  'occasional-ended': fc.record({ kind: fc.constant('occasional-ended'), ratingPct }),
  'element-chosen': fc.record({
    kind: fc.constant('element-chosen'),
    elementNo: fc.integer({ min: 1, max: 9 }),
  }),
  'in-hand-marked': fc.record({ kind: fc.constant('in-hand-marked'), cause: fc.option(text) }),
  'machine-ended': empty('machine-ended'),
  'watch-held': empty('watch-held'),
  'watch-went-on': empty('watch-went-on'),
  'in-hand-noted': fc.record({ kind: fc.constant('in-hand-noted'), note: text }),
  'study-ended': empty('study-ended'),
  'reading-excluded': fc.record({ kind: fc.constant('reading-excluded'), reading: key, cause: text }),
  'reading-restored': fc.record({ kind: fc.constant('reading-restored'), reading: key }),
  'reading-rated': fc.record({ kind: fc.constant('reading-rated'), reading: key, ratingPct }),
  'reading-noted': fc.record({ kind: fc.constant('reading-noted'), reading: key, note: text }),
  'allowances-set': fc.record({ kind: fc.constant('allowances-set'), terms }),
  'frequency-set': fc.record({
    kind: fc.constant('frequency-set'),
    elementNo: fc.integer({ min: 1, max: 9 }),
    unitsPerOccurrence: fc.integer({ min: 1, max: 99 }),
    source: fc.constantFrom('method', 'record', 'observed'),
  }),
  'clock-checked': fc.record({
    kind: fc.constant('clock-checked'),
    elapsedMs: fc.integer({ min: 1, max: 1_000_000 }),
    beforeMs: ms,
    afterMs: ms,
  }),
  'study-imported': fc.record(
    {
      kind: fc.constant('study-imported'),
      starts: fc.constant('study'),
      study: text,
      fileName: text,
      rows: fc.array(row, { maxLength: 3 }),
      filledIn: fc.array(fc.integer({ min: 1, max: 3 }), { maxLength: 3 }),
    },
    { requiredKeys: ['kind', 'starts', 'study', 'fileName', 'rows'] },
  ),
};

const shopKinds: readonly string[] = Object.keys(shopFacts);
const arbitraryFact: fc.Arbitrary<Fact> = fc.oneof(
  ...Object.values<fc.Arbitrary<Fact>>({ ...shopFacts, ...turnFacts, ...studyFacts, ...lotFacts }),
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

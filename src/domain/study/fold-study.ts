import { localIso } from '../records/local-iso';
import type { LogRecord } from '../records/log-record';
import { placeOnTimeline } from '../records/place-on-timeline';
import { recordKey } from '../records/record-key';
import type { Stamp } from '../records/stamp';
import type { StudyFact, StudyHeading } from '../records/study-fact';
import type { ClockFact } from '../records/turn-fact';
import { withoutUndone } from '../records/without-undone';
import { applyCorrections } from './apply-corrections';
import { foldImportedStudy } from './fold-imported-study';
import { cycleOrder, type Reading, type Study, type StudyWatch } from './study';
import type { StudyRow } from './study-row';

/** The taps of the engineer during the study: what Undo may take back. */
const tapKinds = new Set([
  'element-ended',
  'break-point-missed',
  'foreign-began',
  'foreign-ended',
  'occasional-began',
  'occasional-ended',
]);

interface Draft {
  readonly heading: StudyHeading;
  /** What stands on every row alike. */
  readonly carried: Readonly<Record<string, string>>;
  readonly order: readonly number[];
  readings: Reading[];
  watch: { -readonly [K in keyof StudyWatch]: StudyWatch[K] };
  /** Sleep or a reload fell inside the element in hand. */
  clockFlag: '' | 'slept' | 'reloaded';
}

/**
 * A study from its records, in order. Pure: the same records give the same study.
 *
 * Continuous timing: a reading is the difference of the running watch at two break points, less what
 * was timed apart in between.
 *
 * @throws {RangeError} foldStudy requires a stream that begins with a study
 */
export function foldStudy(records: readonly LogRecord[]): Study {
  const first = records[0];
  if (!first) throw new RangeError('foldStudy requires at least one record');
  const { fact } = first;
  if (fact.kind === 'study-imported') return foldImportedStudy(records, fact);
  if (fact.kind !== 'study-started') {
    throw new RangeError('foldStudy requires a stream that begins with a study');
  }

  const placed = placeOnTimeline(records);
  const order = cycleOrder(fact.elements);
  const draft: Draft = {
    heading: fact,
    carried: headOfRows(fact, first.stamp),
    order,
    readings: [],
    clockFlag: '',
    watch: {
      cycle: 1,
      elementIndex: order[0] ?? -1,
      merged: [],
      aside: null,
      beganAtMs: 0,
      apartMs: 0,
      lastStamp: records.at(-1)!.stamp,
      lastAtMs: placed.at(-1)!.atMs,
    },
  };
  let run = first.stamp.run;
  let status: Study['status'] = 'open';
  let undoable: string | null = null;
  for (const { record, atMs } of withoutUndone(placed)) {
    if (record.stamp.run !== run && draft.clockFlag === '' && status === 'open') draft.clockFlag = 'reloaded';
    run = record.stamp.run;
    if (tapKinds.has(record.fact.kind)) undoable = recordKey(record);
    if (record.fact.kind === 'study-ended') status = 'ended';
    else takeTap(draft, record.fact as StudyFact | ClockFact, recordKey(record), atMs);
  }
  return {
    id: recordKey(first),
    title: fact.title,
    status,
    heading: fact,
    startedAt: first.stamp,
    watch: draft.watch,
    undoable,
    ...applyCorrections(draft.readings, records, fact.terms),
  };
}

function takeTap(draft: Draft, fact: StudyFact | ClockFact, key: string, atMs: number): void {
  const { watch } = draft;
  switch (fact.kind) {
    case 'element-ended':
      endElement(draft, fact.ratingPct, key, atMs);
      break;
    case 'break-point-missed':
      watch.merged = [...watch.merged, { cycle: watch.cycle, elementIndex: watch.elementIndex }];
      advance(draft);
      break;
    case 'foreign-began':
      watch.aside = { elementIndex: null, beganAtMs: atMs };
      break;
    case 'occasional-began':
      watch.aside = { elementIndex: fact.elementNo - 1, beganAtMs: atMs };
      break;
    case 'foreign-ended':
      endAside(draft, key, atMs, 100, fact.description);
      break;
    case 'occasional-ended':
      endAside(draft, key, atMs, fact.ratingPct, '');
      break;
    case 'slept':
      draft.clockFlag = 'slept';
      break;
  }
}

function endElement(draft: Draft, ratingPct: number, key: string, atMs: number): void {
  const { watch } = draft;
  const mergedCause = watch.merged.length > 0 ? 'missed-break-point' : null;
  for (const [place, missed] of watch.merged.entries()) {
    draft.readings.push(
      reading(draft, `${key}#${place}`, {
        cycle: missed.cycle,
        elementIndex: missed.elementIndex,
        observedMs: null,
        ratingPct: 100,
        excluded: 'missed-break-point',
        isMerged: true,
      }),
    );
  }
  draft.readings.push(
    reading(draft, key, {
      cycle: watch.cycle,
      elementIndex: watch.elementIndex,
      observedMs: atMs - watch.beganAtMs - watch.apartMs,
      ratingPct,
      excluded: mergedCause ?? (draft.clockFlag === 'slept' ? 'tablet-slept' : null),
      isMerged: mergedCause !== null,
    }),
  );
  watch.merged = [];
  watch.beganAtMs = atMs;
  watch.apartMs = 0;
  draft.clockFlag = '';
  advance(draft);
}

function endAside(draft: Draft, key: string, atMs: number, ratingPct: number, description: string): void {
  const { watch } = draft;
  if (!watch.aside) return;
  const observedMs = atMs - watch.aside.beganAtMs;
  const { elementIndex } = watch.aside;
  draft.readings.push(
    reading(draft, key, {
      cycle: watch.cycle,
      elementIndex,
      observedMs,
      ratingPct,
      excluded: draft.clockFlag === 'slept' ? 'tablet-slept' : null,
      description,
    }),
  );
  watch.apartMs += observedMs;
  watch.aside = null;
}

function advance({ watch, order }: Draft): void {
  const place = order.indexOf(watch.elementIndex);
  if (place === order.length - 1) watch.cycle += 1;
  watch.elementIndex = order[(place + 1) % order.length] ?? -1;
}

function reading(
  draft: Draft,
  id: string,
  what: Pick<StudyRow, 'cycle' | 'observedMs' | 'ratingPct' | 'excluded'> & {
    elementIndex: number | null;
    description?: string;
    isMerged?: boolean;
  },
): Reading {
  const { heading } = draft;
  const element = what.elementIndex === null ? null : heading.elements[what.elementIndex];
  const { allowancePct, basis, machineAllowancePct } = heading.terms;
  return {
    id,
    isMerged: what.isMerged ?? false,
    row: {
      study: heading.title,
      cycle: what.cycle,
      element: element?.name ?? (what.description || 'Foreign element'),
      elementNo: what.elementIndex === null ? heading.elements.length + 1 : what.elementIndex + 1,
      elementClass: element?.elementClass ?? 'foreign',
      work: element?.work ?? 'manual',
      placement: element?.placement ?? 'external',
      unitsPerOccurrence: element?.unitsPerOccurrence ?? 1,
      partsPerCycle: heading.partsPerCycle,
      observedMs: what.observedMs,
      ratingPct: what.ratingPct,
      excluded: what.excluded,
      allowancePct,
      allowanceBasis: basis,
      machineAllowancePct,
      carried: { ...draft.carried, clock_flag: draft.clockFlag },
    },
  };
}

function headOfRows(heading: StudyHeading, startedAt: Stamp): Record<string, string> {
  return {
    part: heading.partCode,
    operator: heading.operator,
    observer: heading.observer,
    method_revision: String(heading.methodRevision),
    conditions: heading.conditions,
    started_at: localIso(startedAt.wallMs, startedAt.offsetMin),
    time_zone: startedAt.zone,
    note: '',
  };
}

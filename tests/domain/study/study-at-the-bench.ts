import { Bench } from '../../../src/application/bench';
import { endElement } from '../../../src/application/study/end-element';
import { startStudy } from '../../../src/application/study/start-study';
import type { LogRecord } from '../../../src/domain/records/log-record';
import type { StudyHeading } from '../../../src/domain/records/study-fact';
import type { ElementDefinition } from '../../../src/domain/shop/element-definition';
import type { Study } from '../../../src/domain/study/study';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';

export function element(name: string, change: Partial<ElementDefinition> = {}): ElementDefinition {
  return {
    name,
    breakPoint: '',
    elementClass: 'repetitive',
    work: 'manual',
    placement: 'external',
    unitsPerOccurrence: 1,
    ...change,
  };
}

/** Load and clean by hand, the machine runs, a blade is changed once in 5. */
export const fourElements = [
  element('Load'),
  element('Run', { work: 'machine' }),
  element('Clean', { placement: 'internal' }),
  element('Blade', { elementClass: 'occasional', unitsPerOccurrence: 5 }),
];

export function heading(change: Partial<StudyHeading> = {}): StudyHeading {
  return {
    title: 'M 2026-03-02',
    part: 't:1',
    partCode: 'M',
    methodRevision: 1,
    elements: fourElements,
    partsPerCycle: 1,
    conditions: '',
    operator: 'K7',
    observer: 'E1',
    personTold: true,
    terms: { allowancePct: 15, basis: 'normal_time', machineAllowancePct: 0 },
    ...change,
  };
}

export const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

/** A bench with a study just begun, on clocks moved by hand. */
export async function openStudy(change: Partial<StudyHeading> = {}, clock = new FakeClock()) {
  const log = new InMemoryRecordLog('t');
  const bench = await Bench.open(log, clock);
  startStudy(bench, heading(change), clock.now());
  return { log, clock, bench };
}

/** The break point of what is in hand, so many milliseconds later. */
export function tapAfter({ bench, clock }: { bench: Bench; clock: FakeClock }, ms: number, rating = 100) {
  clock.pass(ms);
  endElement(bench, clock.now(), rating);
}

export function studyOf(bench: Bench): Study {
  if (!bench.study.value) throw new Error('studyOf requires a study at the bench');
  return bench.study.value;
}

/** Rows as `Load 1: 2000`, with the cause when left out. */
export function lines({ readings }: Study): string[] {
  return readings.map(
    ({ row }) =>
      `${row.element} ${row.cycle}: ${row.observedMs ?? '–'}${row.excluded ? ` (${row.excluded})` : ''}`,
  );
}

export async function everything(log: InMemoryRecordLog): Promise<LogRecord[]> {
  await settled();
  const found: LogRecord[] = [];
  for await (const batch of log.readAll()) found.push(...batch);
  return found;
}

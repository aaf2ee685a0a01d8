import { type DemoCode, demoParts } from '../../../src/demo/demo-parts';
import { lognormalTime, type SpreadTime } from '../../../src/demo/lognormal-time';
import { normalDeviates } from '../../../src/demo/normal-deviates';
import { normalMix } from '../../../src/demo/shift-plan';
import { stopCauses } from '../../../src/demo/stop-reasons';
import {
  boringCv,
  boringMinutes,
  cleaningUp,
  doorsPerOccurrence,
  handWork,
  inspecting,
} from '../../../src/demo/work-content';
import type { CellPlan, StopCause } from '../../../src/domain/cell/cell-plan';
import type { CellElement, CellPlace, CellWork, OccasionalWork } from '../../../src/domain/cell/cell-work';
import type { WorkKind } from '../../../src/domain/shop/element-definition';
import { seededRandom } from '../../../src/statistics/seeded-random';

export const MINUTE_MS = 60_000;

interface Element {
  readonly name: string;
  readonly place: CellPlace;
  readonly work: WorkKind;
  readonly time: (code: DemoCode) => SpreadTime;
}

const element = (
  name: string,
  place: CellPlace,
  work: WorkKind,
  time: (code: DemoCode) => SpreadTime,
): Element => ({ name, place, work, time });

const method: readonly Element[] = [
  element('E1', 'external', 'manual', () => handWork.unload),
  element('E2', 'external', 'manual', () => handWork.load),
  element('W1', 'external', 'walking', () => handWork.walk),
  element('W2', 'internal', 'walking', () => handWork.walk),
  element('E3', 'internal', 'manual', (code) => inspecting(demoParts[code])),
  element('E4', 'internal', 'manual', () => handWork.place),
  element('E5', 'internal', 'manual', () => handWork.get),
  element('E6', 'internal', 'manual', (code) => cleaningUp(demoParts[code])),
  element('MC', 'machine', 'machine', (code) => ({ mean: boringMinutes(demoParts[code]), cv: boringCv })),
];

export const occasionals = (trolley = 8): OccasionalWork[] => [
  occasional('O1', 'internal', doorsPerOccurrence.changeBlade, handWork.changeBlade.mean),
  occasional('O2', 'internal', trolley, handWork.exchangeTrolley.mean),
  occasional('O3', 'external', doorsPerOccurrence.emptyChipTray, handWork.emptyChipTray.mean),
];

function occasional(name: string, place: 'external' | 'internal', everyParts: number, minutes: number) {
  return { name, place, everyParts, timesMs: [minutes * MINUTE_MS], meanMs: minutes * MINUTE_MS };
}

/** The demo shop's cell on one code, as the analysis of its normal times has it: no spread, nothing occasional. */
export function meanCell(code: DemoCode): CellWork {
  return cellOf([code], (time) => time.mean);
}

/** The same with the spread of the shop's hand times, so many cycles long. */
export function spreadCell(code: DemoCode, cycles: number, seed = 7): CellWork {
  const deviate = normalDeviates(seededRandom(seed));
  return cellOf(
    Array.from({ length: cycles }, () => code),
    (time) => lognormalTime(deviate(), time),
  );
}

/** Many cycles of the normal mix, by hands that are slower than standard by so much. */
export function mixedCell(cycles: number, slower: number): CellWork {
  const random = seededRandom(20260302);
  const deviate = normalDeviates(seededRandom(1471208959));
  const codes = Array.from({ length: cycles }, (): DemoCode => {
    let left = random();
    for (const [code, share] of Object.entries(normalMix)) {
      left -= share;
      if (left < 0) return code as DemoCode;
    }
    return 'S';
  });
  const isMachine = (time: SpreadTime) => time.cv === boringCv;
  return cellOf(codes, (time) => lognormalTime(deviate(), time) * (isMachine(time) ? 1 : slower));
}

function cellOf(codes: readonly DemoCode[], minutesOf: (time: SpreadTime) => number): CellWork {
  const rows = codes.map((code) => method.map(({ time }) => minutesOf(time(code)) * MINUTE_MS));
  const elements = method.map(({ name, place, work }, column): CellElement => {
    const timesMs = rows.map((row) => row[column]!);
    return { name, place, work, timesMs, meanMs: timesMs.reduce((sum, time) => sum + time, 0) / rows.length };
  });
  return { elements, occasionals: [], complete: codes.map((_, place) => place) };
}

/** The shop's stoppages, each with many lengths to draw from. */
export function demoStops(): StopCause[] {
  const deviate = normalDeviates(seededRandom(998244353));
  return stopCauses.map((cause) => ({
    reason: cause.reason?.id ?? 'not-stated',
    label: '',
    holdsMachine: cause.holdsMachine,
    everyMs: cause.every * MINUTE_MS,
    lengthsMs: Array.from({ length: 500 }, () => lognormalTime(deviate(), cause) * MINUTE_MS),
  }));
}

/** A plan around some work, with nothing that stops it. */
export function planOf(work: CellWork, change: Partial<CellPlan> = {}): CellPlan {
  return {
    work,
    machines: 1,
    putDownWith: 'E4',
    buffer: 0,
    arrivalLot: 20,
    refillAt: 3,
    trolley: 8,
    dayMs: 420 * MINUTE_MS,
    stops: [],
    scrapShare: 0,
    reworkShare: 0,
    reworkMs: 0,
    ...change,
  };
}

import type { ElementDefinition } from '../domain/shop/element-definition';
import type { StudyRow } from '../domain/study/study-row';
import { seededRandom } from '../statistics/seeded-random';
import type { DemoLog } from './demo-log';
import { demoConditions, demoMethod } from './demo-method';
import { type DemoCode, type DemoPart, demoParts, partSizes } from './demo-parts';
import { lognormalTime, type SpreadTime } from './lognormal-time';
import { normalDeviates } from './normal-deviates';
import { boringCv, boringMinutes, cleaningUp, handWork, inspecting } from './work-content';

/** Short studies of the other codes, timed on the tablet of the engineer's office and taken in as a table. */
const codes: readonly DemoCode[] = ['S', 'L', 'T', 'V'];
const CYCLES = 24;
/** Monday of the fourth week, 07:00, before anybody works. */
const TAKEN_IN = { day: 15, minute: 0 };
const MINUTE_MS = 60_000;

const times: readonly ((part: DemoPart) => SpreadTime)[] = [
  () => handWork.walk,
  () => handWork.unload,
  () => handWork.load,
  () => handWork.walk,
  inspecting,
  () => handWork.place,
  () => handWork.get,
  cleaningUp,
  (part) => ({ mean: boringMinutes(part), cv: boringCv }),
  () => handWork.changeBlade,
  () => handWork.exchangeTrolley,
  () => handWork.emptyChipTray,
];

/** Writes a study of each code but M, which has the formal one. K7 at standard pace, so that no reading is rated. */
export function writeCheckStudies(log: DemoLog): void {
  const deviate = normalDeviates(seededRandom(20260323));
  log.at(TAKEN_IN, () => {
    for (const code of codes) {
      const study = `${code}, one piece, K7`;
      log.append(null, TAKEN_IN, {
        kind: 'study-imported',
        starts: 'study',
        study,
        fileName: 'check-studies.csv',
        rows: rowsOf(study, code, deviate),
      });
    }
  });
}

function rowsOf(study: string, code: DemoCode, deviate: () => number): StudyRow[] {
  const row = (cycle: number, element: ElementDefinition, place: number): StudyRow => ({
    study,
    cycle,
    element: element.name,
    elementNo: place + 1,
    elementClass: element.elementClass,
    work: element.work,
    placement: element.placement,
    unitsPerOccurrence: element.unitsPerOccurrence,
    partsPerCycle: 1,
    observedMs: Math.round(lognormalTime(deviate(), times[place]!(demoParts[code])) * MINUTE_MS),
    ratingPct: 100,
    excluded: null,
    allowancePct: 14,
    allowanceBasis: 'normal_time',
    machineAllowancePct: 4,
    carried: {
      part: code,
      operator: 'K7',
      observer: 'B4',
      conditions: demoConditions,
      ...Object.fromEntries(partSizes(code).map(({ driver, value }) => [driver, String(value)])),
    },
  });
  const cycles = Array.from({ length: CYCLES }, (_, place) => place + 1);
  return cycles.flatMap((cycle) =>
    demoMethod.flatMap((element, place) => {
      const comes = element.elementClass === 'repetitive' || (cycle + place) % 8 === 0;
      return comes ? [row(cycle, element, place)] : [];
    }),
  );
}

import type { Fact } from '../domain/records/log-record';
import { SHOP_STREAM } from '../domain/records/log-record';
import { demoCalendar } from './demo-calendar';
import type { DemoLog, Moment } from './demo-log';
import { demoConditions, demoMethod } from './demo-method';
import { type DemoCode, demoCodes, demoParts } from './demo-parts';
import { REFILL_AT, STACK } from './lot-writer';
import { BATCH_DAYS, demoPeople } from './shift-plan';
import { stopReasons } from './stop-reasons';
import { doorsPerOccurrence } from './work-content';

/** First thing on the first morning, before the turn begins. */
const BEFORE_WORK: Moment = { day: 0, minute: 0 };

/** 2.0 minutes, and 14 % for rest. */
const SET_UP_STANDARD_MS = 136_800;

/** Doors that assembly wants a day: a takt of 100 s in 420 net minutes. */
const DEMAND = 252;

/** What the foreman wrote on days from which on the work was another. */
const demoNotes = [
  { day: BATCH_DAYS, text: 'Doors one by one from today, no more racks' },
  { day: 2 * BATCH_DAYS, text: 'Everybody knows the new way' },
];

/** Sets the invented shop up and gives the ids of its parts. */
export function writeShop(log: DemoLog): Map<DemoCode, string> {
  const write = (fact: Fact) => log.append(SHOP_STREAM, BEFORE_WORK, fact);
  const ids = new Map<DemoCode, string>();
  for (const code of demoCodes) {
    const { name, targetMs } = demoParts[code];
    const part = write({ kind: 'part-defined', code, name });
    write({ kind: 'target-set', part, targetMs, source: 'standard' });
    ids.set(code, part);
  }
  // Written down on the morning on which the shop went over to it.
  const oneByOne: Moment = { day: BATCH_DAYS, minute: 0 };
  log.at(oneByOne, () =>
    log.append(SHOP_STREAM, oneByOne, {
      kind: 'method-revised',
      part: ids.get('M')!,
      elements: demoMethod,
      partsPerCycle: 1,
      conditions: demoConditions,
    }),
  );
  log.at(oneByOne, () =>
    log.append(SHOP_STREAM, oneByOne, {
      kind: 'cell-set',
      cell: {
        arrivalLot: STACK,
        refillAt: REFILL_AT,
        trolley: doorsPerOccurrence.exchangeTrolley,
        partsPerDay: DEMAND,
        valueAdding: ['MC bore', 'E6 clean up edges'],
        putDownWith: 'E4 place on trolley',
        byOther: [],
        machineReasons: [stopReasons.machine.id, stopReasons.extraction.id],
      },
    }),
  );
  write({ kind: 'set-up-standard-set', standardMs: SET_UP_STANDARD_MS });
  write({ kind: 'calendar-set', calendar: demoCalendar });
  for (const { day, text } of demoNotes) {
    const thatMorning: Moment = { day, minute: 0 };
    log.at(thatMorning, () => {
      const { wallMs } = log.stampAt(thatMorning);
      const noted = new Date(wallMs).toISOString().slice(0, 10);
      log.append(SHOP_STREAM, thatMorning, { kind: 'day-noted', day: noted, text, isChange: true, by: 'FM' });
    });
  }
  for (const code of demoPeople) write({ kind: 'person-added', code });
  // A shop offers six reasons at most; its breaks are planned, so nobody needs a button for them.
  const { planned: _, ...offered } = stopReasons;
  write({ kind: 'reasons-set', reasons: Object.values(offered) });
  return ids;
}

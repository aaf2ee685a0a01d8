import type { Fact } from '../domain/records/log-record';
import { SHOP_STREAM } from '../domain/records/log-record';
import type { DemoLog, Moment } from './demo-log';
import { demoConditions, demoMethod } from './demo-method';
import { type DemoCode, demoCodes, demoParts } from './demo-parts';
import { BATCH_DAYS, demoPeople } from './shift-plan';
import { stopReasons } from './stop-reasons';

/** First thing on the first morning, before the turn begins. */
const BEFORE_WORK: Moment = { day: 0, minute: 0 };

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
  for (const code of demoPeople) write({ kind: 'person-added', code });
  // A shop offers six reasons at most; the foreman adds quality queries, the rarest, afterwards.
  const { quality: _, ...offered } = stopReasons;
  write({ kind: 'reasons-set', reasons: Object.values(offered) });
  return ids;
}

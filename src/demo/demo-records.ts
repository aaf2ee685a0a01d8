import type { LogRecord } from '../domain/records/log-record';
import { writeBatchWeek } from './batch-week';
import { DemoLog } from './demo-log';
import { writeFlowDay } from './flow-day';
import { LotWriter } from './lot-writer';
import { settleDoubts } from './settle-doubts';
import { BATCH_DAYS, DAYS } from './shift-plan';
import { ShopChance } from './shop-chance';
import { TurnWriter } from './turn-writer';
import { writeCheckStudies } from './write-check-studies';
import { writeShop } from './write-shop';
import { writeStudy } from './write-study';

/**
 * Four weeks of an invented shop as its tablet would have recorded them: a cell that bores hinge cups in
 * wardrobe doors, one week in batches and three one piece at a time, with a formal study in the fourth.
 * The same records every time.
 */
export function demoRecords(): LogRecord[] {
  const log = new DemoLog();
  const partIds = writeShop(log);
  writeCheckStudies(log);
  writeStudy(log, partIds.get('M')!);
  const chance = new ShopChance();
  const writer = new TurnWriter(log, partIds);
  const lots = new LotWriter(log);
  writeBatchWeek(chance, writer, lots);
  lots.arrived({ day: BATCH_DAYS, minute: 0 });
  for (let day = BATCH_DAYS; day < DAYS; day += 1) writeFlowDay(day, chance, writer, lots);
  settleDoubts(log, DAYS - 1);
  return log.records;
}

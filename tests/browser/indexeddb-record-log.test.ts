import { expect, it } from 'vitest';
import { IndexedDbRecordLog } from '../../src/storage/indexeddb-record-log';
import { recordLogContract } from '../storage/record-log-contract';
import { recordAt } from '../support/records';

let opened = 0;

recordLogContract('the log on the browser’s own IndexedDB', () => {
  opened += 1;
  return IndexedDbRecordLog.open(`contract-${opened}`, () => 't');
});

it('records are saved, one after the other, while all of them are being counted, which takes a second for a million', async () => {
  const log = await IndexedDbRecordLog.open('counted', () => 't');
  const done = { kind: 'part-done', part: 'p', partCode: 'M', targetMs: 90_800 } as const;
  const many = 30_000;
  await log.append(Array.from({ length: many }, (_, place) => recordAt(place + 1, 0, 't:1', done)));
  const order: string[] = [];
  const counted = log.count().then((count) => {
    order.push('counted');
    return count;
  });
  // The first would get its turn before the last question of a count in one piece as well.
  for (const number of [many + 1, many + 2]) {
    await log.append([recordAt(number, 0, 't:1', done)]);
    order.push('saved');
  }
  expect(await counted).toBeGreaterThanOrEqual(many);
  expect(order).toEqual(['saved', 'saved', 'counted']);
});

import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import { Bench } from '../../src/application/bench';
import { addPerson } from '../../src/application/shop/add-person';
import { ChainCheck } from '../../src/domain/records/chain-check';
import type { LogRecord } from '../../src/domain/records/log-record';
import { seededRandom } from '../../src/statistics/seeded-random';
import { IndexedDbRecordLog } from '../../src/storage/indexeddb-record-log';
import { FakeClock } from '../support/fake-clock';

const RUNS = 1_000;
const STEPS = 8;

async function openTab(): Promise<Bench> {
  return Bench.open(await IndexedDbRecordLog.open('two-tabs', () => 't'), new FakeClock());
}

async function everything(): Promise<LogRecord[]> {
  const log = await IndexedDbRecordLog.open('two-tabs', () => 't');
  const found: LogRecord[] = [];
  for await (const batch of log.readAll()) found.push(...batch);
  log.close();
  return found;
}

const settled = (bench: Bench) =>
  new Promise<void>((resolve) => {
    const look = () => (bench.saving.peek().state === 'recorded' ? setTimeout(look, 0) : resolve());
    look();
  });

describe(`two tabs on one database, ${RUNS} random runs`, () => {
  it('never share a number: what one hands over the other goes on with, and what a stale tab taps is refused', async () => {
    let handovers = 0;
    let refused = 0;
    for (let seed = 1; seed <= RUNS; seed += 1) {
      const random = seededRandom(seed);
      globalThis.indexedDB = new IDBFactory();
      let writer = await openTab();
      const stale: Bench[] = [];
      const acknowledged: string[] = [];
      for (let step = 0; step < STEPS; step += 1) {
        const chance = random();
        if (chance < 0.6) {
          const code = `w${step}`;
          addPerson(writer, code);
          // Sometimes the next step comes before the answer.
          if (random() < 0.7) await settled(writer);
          acknowledged.push(code);
        } else if (chance < 0.8) {
          // Asked politely: it finishes what is on its way, and only then the other opens.
          await writer.finish();
          writer = await openTab();
          handovers += 1;
        } else if (chance < 0.9) {
          // Taken from a tab that sleeps: that one still thinks it is the writer.
          await settled(writer);
          stale.push(writer);
          writer = await openTab();
        } else if (stale.length > 0) {
          await settled(writer);
          const sleeper = stale[0]!;
          addPerson(sleeper, `s${step}`);
          await settled(sleeper);
          const isIn = (await everything()).some(
            ({ fact }) => fact.kind === 'person-added' && fact.code === `s${step}`,
          );
          // It got in only where the new writer has not written yet: then the new one is the stale one.
          if (isIn) acknowledged.push(`s${step}`);
          else {
            refused += 1;
            expect(sleeper.saving.value.state).toBe('not-saved');
          }
          if (isIn) {
            writer.close();
            writer = await openTab();
          }
        }
      }
      await settled(writer);
      const records = await everything();
      const check = new ChainCheck();
      for (const record of records) check.take(record);
      expect(check.breaks, `seed ${seed}`).toEqual([]);
      expect(records.map(({ sequence }) => sequence)).toEqual(records.map((_, place) => place + 1));
      const codes = records.map(({ fact }) => (fact.kind === 'person-added' ? fact.code : ''));
      expect(new Set(codes), `seed ${seed}`).toEqual(new Set(acknowledged));
      for (const tab of [writer, ...stale]) tab.close();
    }
    expect(handovers).toBeGreaterThan(RUNS / 2);
    expect(refused).toBeGreaterThan(50);
  }, 120_000);
});

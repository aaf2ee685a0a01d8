import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it, vi } from 'vitest';
import { Bench } from '../../src/application/bench';
import type { ReserveShelf } from '../../src/application/ports/reserve-shelf';
import { definePart } from '../../src/application/shop/define-part';
import { markPartDone } from '../../src/application/turn/mark-part-done';
import { partInHand } from '../../src/application/turn/part-in-hand';
import { startTurn } from '../../src/application/turn/start-turn';
import { ChainCheck } from '../../src/domain/records/chain-check';
import type { LogRecord } from '../../src/domain/records/log-record';
import { IndexedDbRecordLog } from '../../src/storage/indexeddb-record-log';
import type { Journal } from '../../src/storage/journal-client';
import { TwoShelfRecordLog } from '../../src/storage/two-shelf-record-log';
import { FakeClock } from '../support/fake-clock';
import { ArrayFile, contentOf, journalOn } from './in-memory-journal';

const TAPS = 12;
/** Until the log has answered, one way or the other. */
const settled = (bench: Bench) =>
  new Promise<void>((resolve) => {
    const look = () => (bench.saving.peek().state === 'recorded' ? setTimeout(look, 0) : resolve());
    look();
  });

/** Counts what the storage is asked to do, and lets one of it fail: before it is done, or after. */
class Trouble {
  operations = 0;
  constructor(
    private readonly at: number,
    private readonly when: 'before' | 'after',
    private readonly name: string,
  ) {}

  async around<Result>(work: () => Promise<Result>): Promise<Result> {
    this.operations += 1;
    const strikes = this.operations === this.at;
    if (strikes && this.when === 'before') throw new DOMException('planted', this.name);
    const result = await work();
    if (strikes) throw new DOMException('planted', this.name);
    return result;
  }
}

function troubledJournal(journal: Journal, trouble: Trouble): Journal {
  return {
    get ownEnd() {
      return journal.ownEnd;
    },
    append: (records, device) => trouble.around(() => journal.append(records, device)),
    since: (own) => journal.since(own),
    readAll: () => journal.readAll(),
    close: () => journal.close(),
  };
}

function troubledDatabase(log: IndexedDbRecordLog, trouble: Trouble): IndexedDbRecordLog {
  return new Proxy(log, {
    get(target, name) {
      if (name === 'append') return (records: LogRecord[]) => trouble.around(() => target.append(records));
      const value = Reflect.get(target, name, target);
      return typeof value === 'function' ? value.bind(target) : value;
    },
  });
}

async function everything(log: { readAll(): AsyncIterable<LogRecord[]> }): Promise<LogRecord[]> {
  const found: LogRecord[] = [];
  for await (const batch of log.readAll()) found.push(...batch);
  return found;
}

/** A turn of taps through the whole way of a record, with trouble at one operation; what came of it. */
async function turnWithTrouble(trouble: Trouble) {
  globalThis.indexedDB = new IDBFactory();
  const file = new ArrayFile();
  const clock = new FakeClock();
  let held: LogRecord[] = [];
  const reserve: ReserveShelf = {
    hold(records) {
      held = [...records];
      return true;
    },
    read: () => held,
  };
  const database = await IndexedDbRecordLog.open('faults', () => 't');
  const { log } = await TwoShelfRecordLog.open(
    troubledDatabase(database, trouble),
    troubledJournal(journalOn(file), trouble),
  );
  const bench = await Bench.open(log, clock, reserve);
  definePart(bench, 'M', '');
  await settled(bench);
  startTurn(bench, 'K7', partInHand(bench.shop.value.parts[0]!));
  await settled(bench);
  let wasRefused = false;
  let acknowledged = 0;
  const taps: number[] = [];
  for (let tap = 0; tap < TAPS; tap += 1) {
    clock.pass(30_000);
    markPartDone(bench, clock.now());
    taps.push(clock.wallMs);
    await settled(bench);
    const { state } = bench.saving.value;
    if (state === 'not-saved') wasRefused = true;
    if (state === 'saved') acknowledged = tap + 1;
    // At every moment a kill may come: what was acknowledged must be on a shelf, the rest in the reserve.
    const shelved = await everything(database);
    const done = shelved.filter(({ fact }) => fact.kind === 'part-done').length;
    expect(done).toBeGreaterThanOrEqual(acknowledged);
  }
  clock.pass(5_000);
  await vi.waitFor(() => expect(bench.saving.value.state).toBe('saved'));
  return { bench, database, file, taps, wasRefused, held };
}

describe('a record log with one failing operation', () => {
  const names = ['InvalidStateError', 'AbortError', 'UnknownError', 'QuotaExceededError'];

  it('has as many operations as the sweep goes through', async () => {
    const trouble = new Trouble(0, 'before', 'none');
    await turnWithTrouble(trouble);
    // Part, turn and taps, each on two shelves.
    expect(trouble.operations).toBe(2 * (TAPS + 2));
  });

  for (const when of ['before', 'after'] as const) {
    it(`loses, doubles and reorders nothing when any one operation fails ${when} it was done`, async () => {
      for (let at = 1; at <= 2 * (TAPS + 2); at += 1) {
        const trouble = new Trouble(at, when, names[at % names.length]!);
        const { bench, database, file, taps, wasRefused, held } = await turnWithTrouble(trouble);
        expect(wasRefused || at <= 4, `operation ${at} was seen to fail`).toBe(true);
        expect(bench.saving.value.state).toBe('saved');
        expect(held).toEqual([]);
        const records = await everything(database);
        const walls = records
          .filter(({ fact }) => fact.kind === 'part-done')
          .map(({ stamp }) => stamp.wallMs);
        expect(walls).toEqual(taps);
        const check = new ChainCheck();
        for (const record of records) check.take(record);
        expect(check.breaks).toEqual([]);
        const journalled = (await contentOf(journalOn(file))).records;
        const unique = new Map(journalled.map((record) => [record.sequence, record]));
        expect([...unique.keys()].sort((a, b) => a - b)).toEqual(records.map(({ sequence }) => sequence));
        bench.close();
      }
    });
  }
});

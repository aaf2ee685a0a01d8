import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import { Bench } from '../../src/application/bench';
import type { ReserveShelf } from '../../src/application/ports/reserve-shelf';
import { addPerson } from '../../src/application/shop/add-person';
import { ChainCheck } from '../../src/domain/records/chain-check';
import type { LogRecord } from '../../src/domain/records/log-record';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { TwoShelfRecordLog } from '../../src/storage/two-shelf-record-log';
import { everything, settled } from '../domain/study/study-at-the-bench';
import { FakeClock } from '../support/fake-clock';
import { ArrayFile, journalOn } from './in-memory-journal';

const full = () => Promise.reject(new DOMException('full', 'QuotaExceededError'));

/** What a tablet keeps, whatever tabs come and go. */
class Tablet {
  database = new InMemoryRecordLog('t');
  file = new ArrayFile();
  isRefusing = false;
  held: LogRecord[] = [];
  tabs = 0;
  readonly reserve: ReserveShelf = {
    hold: (records) => {
      this.held = structuredClone([...records]);
      return true;
    },
    read: () => structuredClone(this.held),
  };

  /** A tab that writes; only one at a time has the journal. */
  async open(hasJournal: boolean): Promise<{ bench: Bench; clock: FakeClock }> {
    const clock = new FakeClock();
    this.tabs += 1;
    clock.run = `run-${this.tabs}`;
    // Whatever was lost since, a tab goes on with the database that it has.
    const { database } = this;
    const handle: InMemoryRecordLog = Object.assign(Object.create(database), {
      close() {},
      append: (records: LogRecord[]) => (this.isRefusing ? full() : database.append(records)),
    });
    const log = hasJournal
      ? (await TwoShelfRecordLog.open(handle, journalOn(this.file), this.reserve)).log
      : handle;
    return { bench: await Bench.open(log, clock, this.reserve), clock };
  }

  async people(): Promise<string[]> {
    const records = await everything(this.database);
    return records.flatMap(({ fact }) => (fact.kind === 'person-added' ? [fact.code] : []));
  }

  async chainBreaks() {
    const check = new ChainCheck();
    for (const record of await everything(this.database)) check.take(record);
    return check.breaks;
  }
}

describe('two shelves of which another tab wrote to one alone', () => {
  let tablet: Tablet;
  let first: Bench;

  beforeEach(async () => {
    tablet = new Tablet();
    first = (await tablet.open(true)).bench;
    addPerson(first, 'before');
    await settled();
    const { bench: thief } = await tablet.open(false);
    addPerson(thief, 'late');
    await settled();
    thief.close();
  });

  it('have each tap of the first tab once, behind what the other one saved', async () => {
    for (const code of ['b1', 'b2', 'b3']) {
      addPerson(first, code);
      await settled();
    }
    expect(first.saving.value.state).toBe('not-saved');
    first.close();
    for (let reload = 0; reload < 3; reload += 1) (await tablet.open(true)).bench.close();
    expect(await tablet.people()).toEqual(['before', 'late', 'b1', 'b2', 'b3']);
    expect(await tablet.chainBreaks()).toEqual([]);
  });

  it('give what the other one saved back to a database that was lost, though the first gave its number too', async () => {
    addPerson(first, 'b1');
    await settled();
    first.close();
    (await tablet.open(true)).bench.close();
    tablet.database = new InMemoryRecordLog('t');
    (await tablet.open(true)).bench.close();
    expect(await tablet.people()).toEqual(['before', 'late', 'b1']);
    expect(await tablet.chainBreaks()).toEqual([]);
  });

  it('give all of it back where the other one saved more than the first gave numbers to', async () => {
    addPerson(first, 'b1');
    await settled();
    const { bench: thief } = await tablet.open(false);
    addPerson(thief, 'later');
    await settled();
    tablet.held = [];
    (await tablet.open(true)).bench.close();
    tablet.database = new InMemoryRecordLog('t');
    (await tablet.open(true)).bench.close();
    expect((await tablet.people()).sort()).toEqual(['b1', 'before', 'late', 'later']);
    expect(await tablet.chainBreaks()).toEqual([]);
  });

  it('bring in what the journal alone has, also where nothing lies in reserve', async () => {
    addPerson(first, 'b1');
    await settled();
    addPerson(first, 'b2');
    await settled();
    tablet.held = [];
    (await tablet.open(true)).bench.close();
    expect(await tablet.people()).toEqual(['before', 'late', 'b1', 'b2']);
  });

  it('bring it in once, also where a tab without the journal took it from the reserve before', async () => {
    addPerson(first, 'b1');
    addPerson(first, 'b2');
    await settled();
    (await tablet.open(false)).bench.close();
    expect(await tablet.people()).toEqual(['before', 'late', 'b1', 'b2']);
    (await tablet.open(true)).bench.close();
    expect(await tablet.people()).toEqual(['before', 'late', 'b1', 'b2']);
  });
});

describe('a journal beside a database that refuses', () => {
  it('has each record once, however often it is tried again, and gives it back after a kill', async () => {
    const tablet = new Tablet();
    const { bench, clock } = await tablet.open(true);
    tablet.isRefusing = true;
    const codes = Array.from({ length: 50 }, (_, place) => `p${place}`);
    for (const code of codes) addPerson(bench, code);
    await settled();
    for (let again = 0; again < 20; again += 1) {
      clock.pass(2_000);
      await settled();
    }
    const lines = new TextDecoder().decode(tablet.file.bytes).trim().split('\n');
    expect(lines).toHaveLength(50);
    tablet.isRefusing = false;
    tablet.held = [];
    await tablet.open(true);
    expect(await tablet.people()).toEqual(codes);
  });
});

type Act =
  | 'tap'
  | 'tap and go on at once'
  | 'refuse'
  | 'take again'
  | 'steal'
  | 'tell the first'
  | 'kill all'
  | 'lose database'
  | 'lose tail'
  | 'lose journal';

/** Plays tabs, troubles and kills; what is there in the end once the storage is well and one tab was opened. */
async function play(acts: readonly Act[]) {
  const tablet = new Tablet();
  let tabs = [{ ...(await tablet.open(true)), hasJournal: true, waiting: [] as string[] }];
  const tapped = ['c0'];
  addPerson(tabs[0]!.bench, 'c0');
  await settled();
  /** By how many copies each was acknowledged. */
  const kept = new Map<string, 1 | 2>([['c0', 2]]);
  const open = async (hasJournal: boolean) => {
    // What it takes from the reserve it may have to wait with in its turn.
    const waiting = tablet.held.flatMap(({ fact }) => (fact.kind === 'person-added' ? [fact.code] : []));
    tabs.push({ ...(await tablet.open(hasJournal)), hasJournal, waiting });
    if (!tablet.isRefusing && !hasJournal) for (const code of waiting.splice(0)) kept.set(code, 1);
    // All that the database has then is on both shelves.
    if (hasJournal) for (const code of await tablet.people()) kept.set(code, 2);
  };
  for (const act of acts) {
    if (act === 'tap' || act === 'tap and go on at once') {
      const { bench, hasJournal, waiting } = tabs[tapped.length % tabs.length]!;
      const code = `c${tapped.length}`;
      addPerson(bench, code);
      tapped.push(code);
      if (act === 'tap') {
        await settled();
        const { state, isInReserve } = bench.saving.value;
        if (state === 'saved') kept.set(code, hasJournal ? 2 : 1);
        else if (isInReserve) kept.set(code, 2);
        if (state !== 'saved') waiting.push(code);
      } else waiting.push(code);
    } else if (act === 'refuse') tablet.isRefusing = true;
    else if (act === 'take again') {
      tablet.isRefusing = false;
      for (const { clock } of tabs) clock.pass(2_000);
      await settled();
      // What was in reserve has gone to what this tab writes to.
      for (const { bench, hasJournal, waiting } of tabs) {
        if (bench.saving.value.state !== 'saved') continue;
        for (const code of waiting.splice(0)) kept.set(code, hasJournal ? 2 : 1);
      }
    } else if (act === 'steal' && tabs.length < 3) await open(!tabs.some(({ hasJournal }) => hasJournal));
    else if (act === 'tell the first' && tabs.length > 1) tabs.shift()!.bench.close();
    else if (act === 'kill all' || act.startsWith('lose')) {
      for (const { bench } of tabs) bench.close();
      tabs = [];
      await settled();
      const records = await everything(tablet.database);
      // What only one copy was said to be of may go with it; the tail that a crash takes is short.
      if (act === 'lose database' || act === 'lose tail') {
        const stays = act === 'lose database' ? [] : records.slice(0, -2);
        const gone = records.slice(stays.length);
        tablet.database = new InMemoryRecordLog('t');
        tablet.isRefusing = false;
        await tablet.database.append(stays);
        for (const { fact } of gone)
          if (fact.kind === 'person-added' && kept.get(fact.code) === 1) kept.delete(fact.code);
      }
      if (act === 'lose journal') tablet.file = new ArrayFile();
      await open(true);
    }
  }
  for (const { bench } of tabs) bench.close();
  await settled();
  tablet.isRefusing = false;
  tabs = [];
  await open(true);
  tabs[0]!.bench.close();
  return { tablet, tapped, kept };
}

describe('any course of tabs, refusals, thefts, kills and losses of one shelf', () => {
  const anyAct = fc.oneof(
    { weight: 6, arbitrary: fc.constant<Act>('tap') },
    { weight: 2, arbitrary: fc.constant<Act>('tap and go on at once') },
    ...(
      [
        'refuse',
        'take again',
        'steal',
        'tell the first',
        'kill all',
        'lose database',
        'lose tail',
        'lose journal',
      ] as const
    ).map((act) => ({ weight: 1, arbitrary: fc.constant<Act>(act) })),
  );
  // More of them: DEVELOPERS.md, section 1.
  const numRuns = Number(process.env.PACEWRIGHT_RUNS ?? 300);

  it('ends with each tap that was said to be kept there once, and none twice', {
    timeout: 600_000,
  }, async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anyAct, { maxLength: 30 }), async (acts) => {
        const { tablet, tapped, kept } = await play(acts);
        const people = await tablet.people();
        expect(new Set(people).size).toBe(people.length);
        for (const code of kept.keys()) expect(people).toContain(code);
        for (const code of people) expect(tapped).toContain(code);
      }),
      { numRuns },
    );
  });
});

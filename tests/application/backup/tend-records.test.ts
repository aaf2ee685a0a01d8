import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { copyToFolder } from '../../../src/application/backup/copy-to-folder';
import { settleMissing } from '../../../src/application/backup/count-missing';
import { tendRecords } from '../../../src/application/backup/tend-records';
import { type Upkeep, untended } from '../../../src/application/backup/upkeep';
import { Bench } from '../../../src/application/bench';
import { addPerson } from '../../../src/application/shop/add-person';
import { definePart } from '../../../src/application/shop/define-part';
import { endTurn } from '../../../src/application/turn/end-turn';
import { enterTurn } from '../../../src/application/turn/enter-turn';
import { startTurn } from '../../../src/application/turn/start-turn';
import type { Fact } from '../../../src/domain/records/log-record';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { everythingIn, sourceOf } from '../../support/backup-files';
import { fakeTools } from '../../support/backup-tools';
import { damagedLog } from '../../support/damaged-log';
import { FakeClock } from '../../support/fake-clock';
import { recordAt } from '../../support/records';

/** The copy of FakeClock's day, of device t. */
const TODAY = 'pacewright-t-2026-03-02.txt';

/** Long enough for a snapshot and a copy in memory, and for what follows from the record of it. */
async function settledBy(clock: FakeClock) {
  for (let round = 0; round < 4; round += 1) {
    await new Promise((resolve) => setTimeout(resolve, 15));
    clock.pass(0);
  }
}

async function tended() {
  const log = new InMemoryRecordLog('t');
  const clock = new FakeClock();
  const bench = await Bench.open(log, clock);
  const parts = fakeTools();
  const upkeep = signal<Upkeep>(untended);
  addPerson(bench, 'K7');
  const part = { part: definePart(bench, 'M', ''), partCode: 'M', targetMs: null };
  const settled = () => settledBy(clock);
  const stop = tendRecords(bench, parts.tools, upkeep);
  await settled();
  const turn = async () => {
    startTurn(bench, 'K7', part);
    clock.pass(60_000);
    endTurn(bench, clock.now());
    await settled();
  };
  return { ...parts, bench, clock, log, upkeep, stop, turn, part, settled };
}

/** How many records of a kind the day's copy in the folder holds. */
async function inFolder({ folder, tools }: ReturnType<typeof fakeTools>, kind: Fact['kind']) {
  let found = 0;
  await tools.format.read(sourceOf(folder.files.get(TODAY)!), {
    take: (records) => {
      found += records.filter(({ fact }) => fact.kind === kind).length;
    },
  });
  return found;
}

describe('the upkeep of the records', () => {
  it('takes the day’s snapshot and tells that there is no copy outside yet', async () => {
    const { snapshots, upkeep } = await tended();
    expect(snapshots.kept.map(({ snapshot }) => snapshot.records)).toEqual([2]);
    expect(upkeep.value.copyAge).toMatchObject({ isCopied: false, recordsSince: 2, isDue: false });
  });

  it('copies into the chosen folder when a turn has ended, and not before', async () => {
    const { folder, upkeep, turn, bench, part, clock, settled } = await tended();
    expect(folder.files.size).toBe(0);
    startTurn(bench, 'K7', part);
    clock.pass(3_600_000);
    await settled();
    expect(folder.files.size).toBe(0);
    endTurn(bench, clock.now());
    await settled();
    expect([...folder.files.keys()]).toEqual([TODAY]);
    expect(upkeep.value.copyAge).toMatchObject({ isCopied: true, how: 'folder', recordsSince: 0 });
    await turn();
    expect(upkeep.value.copyAge).toMatchObject({ recordsSince: 0, finishedSince: 0 });
  });

  it('copies a turn that began before the copy of the turn before it was noted, once it has ended', async () => {
    const shop = await tended();
    const { folder, bench, part, clock, settled } = shop;
    const write = folder.write.bind(folder);
    folder.write = async (name, chunks) => {
      await write(name, chunks);
      folder.write = write;
      startTurn(bench, 'K7', part);
      clock.pass(1_000);
    };
    await shop.turn();
    expect(bench.busy).toBe(true);
    clock.pass(3_600_000);
    endTurn(bench, clock.now());
    await settled();
    expect(await inFolder(shop, 'turn-ended')).toBe(2);
  });

  it('copies a turn that has ended when a copy was made by hand in the course of it', async () => {
    const shop = await tended();
    const { bench, part, clock, settled, tools } = shop;
    startTurn(bench, 'K7', part);
    clock.pass(3_600_000);
    await copyToFolder(bench, tools);
    clock.pass(3_600_000);
    endTurn(bench, clock.now());
    await settled();
    expect(await inFolder(shop, 'turn-ended')).toBe(1);
  });

  it('copies a turn that ended while the copy was written, though its end came before the note', async () => {
    const shop = await tended();
    const { folder, bench, part, clock, settled, tools } = shop;
    startTurn(bench, 'K7', part);
    await settled();
    const write = folder.write.bind(folder);
    folder.write = async (name, chunks) => {
      await write(name, chunks);
      folder.write = write;
      clock.pass(1_000);
      endTurn(bench, clock.now());
    };
    await copyToFolder(bench, tools);
    await settled();
    expect(await inFolder(shop, 'turn-ended')).toBe(1);
  });

  it('copies a turn that was entered later, and one study of a table, each once', async () => {
    const shop = await tended();
    const { bench, part, clock, settled, folder, upkeep } = shop;
    await shop.turn();
    const toWallMs = clock.now().wallMs - 3_600_000;
    const lines = [{ ...part, done: 5, rework: 0, scrap: 0 }];
    const told = { person: 'K7', fromWallMs: toWallMs - 3_600_000, toWallMs, lines, stops: [] };
    enterTurn(bench, told, { by: 'M2', why: 'the tablet was away' });
    await settled();
    expect(await inFolder(shop, 'turn-started')).toBe(2);
    bench.begin({ kind: 'study-imported', starts: 'study', study: 's', fileName: 's.csv', rows: [] });
    let writes = 0;
    const write = folder.write.bind(folder);
    folder.write = async (name, chunks) => {
      writes += 1;
      await write(name, chunks);
    };
    await settled();
    expect(writes).toBe(1);
    expect(upkeep.value.copyAge).toMatchObject({ recordsSince: 0, finishedSince: 0 });
  });

  it('is in want of no copy because another tablet’s turns came in', async () => {
    const { log, turn, bench, settled, upkeep } = await tended();
    await turn();
    const started = { kind: 'turn-started', starts: 'turn', person: 'Q', part: 'p', partCode: 'M' } as const;
    await log.append([
      recordAt(1, 86_400_000, 'b:1', { ...started, targetMs: null }, { device: 'b' }),
      recordAt(2, 86_460_000, 'b:1', { kind: 'turn-ended' }, { device: 'b' }),
    ]);
    addPerson(bench, 'M2');
    await settled();
    expect(upkeep.value.copyAge).toMatchObject({ recordsSince: 3, finishedSince: 0 });
  });

  it('copies nothing while a turn runs, also when an earlier one is not in the folder yet', async () => {
    const { folder, turn, bench, part, clock, upkeep, settled } = await tended();
    folder.mayWrite = false;
    await turn();
    startTurn(bench, 'K7', part, clock.now());
    folder.mayWrite = true;
    clock.pass(3_600_000);
    await settled();
    expect(upkeep.value.copyAge).toMatchObject({ finishedSince: 1 });
    expect(folder.files.size).toBe(0);
    endTurn(bench, clock.now());
    await settled();
    expect(folder.files.size).toBe(1);
  });

  it('counts finished turns where nobody chose a folder, and is due at the fifth', async () => {
    const { folder, upkeep, turn } = await tended();
    folder.name = null;
    for (let count = 1; count <= 4; count += 1) await turn();
    expect(upkeep.value.copyAge).toMatchObject({ finishedSince: 4, isDue: false });
    await turn();
    expect(upkeep.value.copyAge).toMatchObject({ finishedSince: 5, isDue: true });
  });

  it('says why the folder has no copy', async () => {
    const { folder, upkeep, turn } = await tended();
    folder.write = async () => {
      throw new DOMException('the share is not there', 'NotFoundError');
    };
    await turn();
    expect(upkeep.value.folderProblem).toBe('not-written');
  });

  it('tells of a log that lost records, and leaves the snapshots alone', async () => {
    const { bench, tools, upkeep, turn, stop, snapshots, clock, settled } = await tended();
    for (let count = 0; count < 6; count += 1) await turn();
    stop();
    clock.pass(86_400_000);
    const again = tendRecords(bench, tools, upkeep);
    await settled();
    again();
    const kept = snapshots.kept.length;
    const wiped = await Bench.open(new InMemoryRecordLog('t'), clock);
    addPerson(wiped, 'K7');
    await settled();
    tendRecords(wiped, tools, upkeep)();
    await settled();
    expect(upkeep.value.snapshot).toMatchObject({ ok: false, reason: 'count-collapsed', records: 1 });
    expect(snapshots.kept).toHaveLength(kept);
  });

  it('writes no snapshot again and again that a damaged log cannot fill', async () => {
    const { tools, upkeep, stop, snapshots, log, clock, bench, settled } = await tended();
    for (let place = 0; place < 10; place += 1) addPerson(bench, `P${place}`);
    await settled();
    stop();
    clock.pass(86_400_000);
    const damaged = await Bench.open(await damagedLog(log, 11), clock);
    tendRecords(damaged, tools, upkeep);
    await settled();
    expect(upkeep.value.snapshot).toMatchObject({ ok: false, reason: 'count-collapsed', records: 1 });
    const { length } = snapshots.done;
    definePart(damaged, 'L', '');
    await settled();
    expect(snapshots.done).toHaveLength(length);
    expect(upkeep.value.snapshot).toMatchObject({ reason: 'count-collapsed' });
  });

  it('tells how many records are gone since it last looked, whatever comes after, until somebody settles it', async () => {
    const { tools, lastSeen, clock, stop, settled } = await tended();
    expect(lastSeen.seen).toEqual(new Map([['t', { records: 2, missing: 0 }]]));
    stop();
    const look = async (log: InMemoryRecordLog) => {
      const bench = await Bench.open(log, clock);
      const upkeep = signal<Upkeep>(untended);
      const end = tendRecords(bench, { ...tools, snapshots: null }, upkeep);
      await settled();
      const { missing } = upkeep.value;
      end();
      return { bench, missing };
    };
    const wiped = new InMemoryRecordLog('another');
    const { bench, missing } = await look(wiped);
    expect(missing).toBe(2);
    for (const code of ['K1', 'K2', 'K3']) addPerson(bench, code);
    await settled();
    expect((await look(wiped)).missing).toBe(2);
    settleMissing(tools);
    expect((await look(wiped)).missing).toBe(0);
    expect(lastSeen.seen).toEqual(new Map([['another', { records: 3, missing: 0 }]]));
  });

  it('tells of a single one that is gone, though the opening itself recorded that the page was there again', async () => {
    const { tools, log, clock, stop, bench: before, part, settled } = await tended();
    startTurn(before, 'K7', part);
    addPerson(before, 'K8');
    await settled();
    // While something is timed it looks every ten minutes.
    clock.pass(600_000);
    await settled();
    stop();
    await before.rest();
    const shorter = new InMemoryRecordLog('t');
    await shorter.append((await everythingIn(log)).slice(0, -1));
    clock.reload(1_000);
    const bench = await Bench.open(shorter, clock);
    const upkeep = signal<Upkeep>(untended);
    tendRecords(bench, tools, upkeep)();
    await settled();
    expect((await shorter.lastRecord())?.fact.kind).toBe('page-opened');
    expect(upkeep.value.missing).toBe(1);
  });

  it('leaves the copy in the folder alone while records are gone, also after the next turn', async () => {
    const shop = await tended();
    const { tools, folder, log, clock, stop, turn, part, settled } = shop;
    for (let count = 0; count < 6; count += 1) await turn();
    stop();
    const before = [...folder.files];
    const shorter = new InMemoryRecordLog('t');
    await shorter.append((await everythingIn(log)).slice(0, -3));
    clock.reload(300_000);
    const bench = await Bench.open(shorter, clock);
    const upkeep = signal<Upkeep>(untended);
    tendRecords(bench, tools, upkeep);
    await settled();
    // The page was gone in the course of the sixth turn, whose end is among what was lost.
    endTurn(bench, clock.now());
    startTurn(bench, 'K7', part);
    clock.pass(60_000);
    endTurn(bench, clock.now());
    await settled();
    expect(upkeep.value.missing).toBe(3);
    expect([...folder.files]).toEqual(before);
    settleMissing(tools);
    startTurn(bench, 'K7', part);
    clock.pass(60_000);
    endTurn(bench, clock.now());
    await settled();
    expect(folder.files.get(TODAY)).toBe(before[0]![1]);
    expect([...folder.files.keys()]).toEqual([TODAY, 'pacewright-t-2026-03-02-2.txt']);
  });

  it('shows a break among the newest records', async () => {
    const { log, bench, tools, clock, upkeep, stop, settled } = await tended();
    stop();
    const [last] = await log.readNewest(1);
    // A number is left out, as if a record had gone.
    await log.append([{ ...last!, sequence: last!.sequence + 2 }]);
    bench.close();
    const later = await Bench.open(log, clock);
    tendRecords(later, tools, upkeep);
    await settled();
    expect(upkeep.value.breaks).toEqual([{ device: 't', sequence: 3, why: 'missing' }]);
  });
});

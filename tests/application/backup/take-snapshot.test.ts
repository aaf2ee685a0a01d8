import { describe, expect, it } from 'vitest';
import { restoreBackup } from '../../../src/application/backup/restore-backup';
import { GENERATIONS, takeSnapshot } from '../../../src/application/backup/take-snapshot';
import { Bench } from '../../../src/application/bench';
import { addPerson } from '../../../src/application/shop/add-person';
import { definePart } from '../../../src/application/shop/define-part';
import { partInHand } from '../../../src/application/turn/part-in-hand';
import { startTurn } from '../../../src/application/turn/start-turn';
import { recordLine } from '../../../src/domain/records/record-line';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { everythingIn, sourceOf } from '../../support/backup-files';
import { fakeTools, spoilt } from '../../support/backup-tools';
import { damagedLog } from '../../support/damaged-log';
import { FakeClock } from '../../support/fake-clock';

const DAY_MS = 86_400_000;
const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

async function shopOf(people: number) {
  const clock = new FakeClock();
  const log = new InMemoryRecordLog('t');
  const bench = await Bench.open(log, clock);
  for (let place = 0; place < people; place += 1) addPerson(bench, `P${place}`);
  await settled();
  return { bench, clock, log, ...fakeTools() };
}

describe('takeSnapshot', () => {
  it('copies the log once a day', async () => {
    const { bench, tools, clock, snapshots } = await shopOf(10);
    expect(await takeSnapshot(bench, tools)).toEqual({
      ok: true,
      snapshot: { generation: 1, day: '2026-03-02', records: 10 },
    });
    expect(await takeSnapshot(bench, tools)).toEqual({ ok: false, reason: 'not-due' });
    clock.pass(DAY_MS);
    expect(await takeSnapshot(bench, tools)).toMatchObject({
      snapshot: { generation: 2, day: '2026-03-03' },
    });
    expect(snapshots.kept).toHaveLength(2);
  });

  it('puts the copy of the day anew once the log holds twice as much, and gives up only that one', async () => {
    const { bench, tools, clock, snapshots } = await shopOf(1);
    await takeSnapshot(bench, tools);
    clock.pass(DAY_MS);
    await takeSnapshot(bench, tools);
    addPerson(bench, 'K7');
    await settled();
    expect(await takeSnapshot(bench, tools)).toMatchObject({ ok: true, snapshot: { records: 2 } });
    expect(snapshots.kept.map(({ snapshot }) => [snapshot.day, snapshot.records])).toEqual([
      ['2026-03-02', 1],
      ['2026-03-03', 2],
    ]);
    expect(snapshots.done.slice(-3)).toEqual(['wrote 3', 'read 3', 'removed 2']);
    addPerson(bench, 'M2');
    await settled();
    expect(await takeSnapshot(bench, tools)).toEqual({ ok: false, reason: 'not-due' });
  });

  it('keeps eight, and gives the oldest up only after the newest was read back', async () => {
    const { bench, tools, clock, snapshots } = await shopOf(10);
    for (let day = 0; day < 10; day += 1) {
      await takeSnapshot(bench, tools);
      clock.pass(DAY_MS);
    }
    // Seven generations are asked for at least, and the day's own is the eighth.
    expect(GENERATIONS).toBe(8);
    expect(snapshots.kept.map(({ snapshot }) => snapshot.generation)).toEqual([3, 4, 5, 6, 7, 8, 9, 10]);
    expect(snapshots.done.slice(-3)).toEqual(['wrote 10', 'read 10', 'removed 2']);
  });

  it('takes one that does not read back away again, and gives no older one up', async () => {
    const { bench, tools, clock, snapshots } = await shopOf(10);
    for (let day = 0; day < 8; day += 1) {
      await takeSnapshot(bench, tools);
      clock.pass(DAY_MS);
    }
    snapshots.spoil = spoilt;
    expect(await takeSnapshot(bench, tools)).toMatchObject({ ok: false, reason: 'not-verified' });
    expect(snapshots.kept.map(({ snapshot }) => snapshot.generation)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it('copies what the log holds, not what the page has in memory', async () => {
    const { bench, tools, log, snapshots } = await shopOf(10);
    // On the screen at once, in the log a moment later.
    addPerson(bench, 'late');
    expect(bench.shop.value.people).toContain('late');
    await takeSnapshot(bench, tools);
    const wiped = new InMemoryRecordLog('new');
    const { bytes } = snapshots.kept[0]!;
    await restoreBackup({ log: wiped, busy: false }, tools, sourceOf(bytes));
    const lines = (await everythingIn(log)).map(recordLine);
    const kept = (await everythingIn(wiped)).map(recordLine);
    expect(kept).toEqual(lines.slice(0, kept.length));
    expect(kept.length).toBeGreaterThanOrEqual(10);
  });

  it('stops when the log holds a fifth less than the largest snapshot, and says what it was', async () => {
    const full = await shopOf(100);
    await takeSnapshot(full.bench, full.tools);
    for (const records of [0, 1, 79]) {
      const lost = await shopOf(records);
      expect(await takeSnapshot(lost.bench, full.tools)).toEqual({
        ok: false,
        reason: 'count-collapsed',
        records,
        before: { generation: 1, day: '2026-03-02', records: 100 },
      });
    }
    const fewer = await shopOf(80);
    fewer.clock.pass(DAY_MS);
    expect(await takeSnapshot(fewer.bench, full.tools)).toMatchObject({ ok: true });
    // Measured against the largest, so that a loss of a little a day does not go unseen.
    const fewerStill = await shopOf(79);
    fewerStill.clock.pass(2 * DAY_MS);
    expect(await takeSnapshot(fewerStill.bench, full.tools)).toMatchObject({ reason: 'count-collapsed' });
  });

  it('stops when the log has as many records as ever, but a copy can hold only few of them any more', async () => {
    const full = await shopOf(100);
    for (let day = 0; day < 8; day += 1) {
      await takeSnapshot(full.bench, full.tools);
      full.clock.pass(DAY_MS);
    }
    const { snapshots } = full;
    const damaged = await damagedLog(full.log, 90);
    const bench = await Bench.open(damaged, full.clock);
    expect(await takeSnapshot(bench, full.tools)).toMatchObject({
      ok: false,
      reason: 'count-collapsed',
      records: 10,
      before: { records: 100 },
    });
    expect(snapshots.kept.map(({ snapshot }) => snapshot.generation)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it('is named for what it holds, not for what the log counts', async () => {
    const { log, clock, tools, snapshots } = await shopOf(10);
    const bench = await Bench.open(await damagedLog(log, 1), clock);
    expect(await takeSnapshot(bench, tools)).toMatchObject({ ok: true, snapshot: { records: 9 } });
    expect(snapshots.kept.map(({ snapshot }) => snapshot.records)).toEqual([9]);
    expect(await takeSnapshot(bench, tools)).toMatchObject({ reason: 'not-due' });
  });

  it('takes one a day when the clock goes back, too, and counts on', async () => {
    const { bench, tools, clock } = await shopOf(10);
    await takeSnapshot(bench, tools);
    clock.setBy(-3 * DAY_MS);
    expect(await takeSnapshot(bench, tools)).toMatchObject({
      snapshot: { generation: 2, day: '2026-02-27' },
    });
    expect(await takeSnapshot(bench, tools)).toMatchObject({ reason: 'not-due' });
  });

  it('waits while something is timed, has nothing to do in an empty shop, and may not be possible', async () => {
    const { bench, tools } = await shopOf(1);
    expect(await takeSnapshot(bench, { ...tools, snapshots: null })).toEqual({
      ok: false,
      reason: 'not-possible',
    });
    definePart(bench, 'M', 'Medium door');
    startTurn(bench, 'P0', partInHand(bench.shop.value.parts[0]!));
    expect(await takeSnapshot(bench, tools)).toEqual({ ok: false, reason: 'busy' });
    const empty = await shopOf(0);
    expect(await takeSnapshot(empty.bench, empty.tools)).toEqual({ ok: false, reason: 'not-due' });
  });

  it('says what was said when it could not be written', async () => {
    const { bench, tools, snapshots } = await shopOf(3);
    snapshots.write = async () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    expect(await takeSnapshot(bench, tools)).toEqual({
      ok: false,
      reason: 'not-written',
      problem: 'QuotaExceededError: full',
    });
  });
});

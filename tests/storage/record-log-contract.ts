import { describe, expect, it } from 'vitest';
import type { RecordLog } from '../../src/application/ports/record-log';
import type { LogRecord } from '../../src/domain/records/log-record';
import { recordAt } from '../support/records';

const started = {
  kind: 'turn-started',
  starts: 'turn',
  person: 'K7',
  part: 'p',
  partCode: 'M',
  targetMs: 90_800,
} as const;
const done = { kind: 'part-done', part: 'p', partCode: 'M', targetMs: 90_800 } as const;

async function all(log: RecordLog): Promise<LogRecord[]> {
  const found: LogRecord[] = [];
  for await (const batch of log.readAll()) found.push(...batch);
  return found;
}

/** What every log promises. Run on each implementation, with an empty log of device `t` for every test. */
export function recordLogContract(name: string, open: () => Promise<RecordLog>): void {
  describe(`${name} as a record log`, () => {
    it('gives back what was appended, unchanged', async () => {
      const log = await open();
      const record = recordAt(1, 0, 't:1', { ...started, person: 'Ä 7 "quoted" \u0000 😀' });
      await log.append([record]);
      expect(await log.readStream('t:1')).toEqual([record]);
      expect(await all(log)).toEqual([record]);
      expect(await log.count()).toBe(1);
    });

    it('refuses a key that another record has, and everything that came with it', async () => {
      const log = await open();
      await log.append([recordAt(1, 0, 't:1', started)]);
      const clash = recordAt(1, 9, 't:1', done, { chain: 77 });
      const twice = log.append([recordAt(2, 5, 't:1', done), clash]);
      await expect(twice).rejects.toThrow();
      expect(await all(log)).toEqual([recordAt(1, 0, 't:1', started)]);
    });

    it('takes a record that is there already, word for word, as written, and adds what came with it', async () => {
      const log = await open();
      await log.append([recordAt(1, 0, 't:1', started)]);
      await log.append([recordAt(1, 0, 't:1', started), recordAt(2, 5, 't:1', done)]);
      expect(await all(log)).toEqual([recordAt(1, 0, 't:1', started), recordAt(2, 5, 't:1', done)]);
    });

    it('refuses a call that holds the same key twice', async () => {
      const log = await open();
      const twice = log.append([recordAt(1, 0, 't:1', started), recordAt(1, 0, 't:1', started)]);
      await expect(twice).rejects.toThrow();
      expect(await log.count()).toBe(0);
    });

    it('counts the records of every tablet, whatever numbers are missing', async () => {
      const log = await open();
      const numbers = [1, 2, 9_999, 10_000, 10_001, 10_002, 20_001, 20_002, 500_000, 2 ** 52];
      await log.append(numbers.map((number) => recordAt(number, 0, 't:1', done)));
      for (const device of ['s', 't-2', 'z']) {
        await log.append([1, 10_001, 10_002].map((number) => recordAt(number, 0, 'x:1', done, { device })));
      }
      expect(await log.count()).toBe(19);
      const byDevice = Object.fromEntries(await log.countByDevice());
      expect(byDevice).toEqual({ s: 3, t: 10, 't-2': 3, z: 3 });
    });

    it('keeps records of another device under the same sequence number', async () => {
      const log = await open();
      await log.append([recordAt(1, 0, 't:1', started)]);
      await log.append([recordAt(1, 1, 'other:1', started, { device: 'other' })]);
      expect(await log.count()).toBe(2);
    });

    it('knows the newest record of its own device only', async () => {
      const log = await open();
      expect(await log.lastRecord()).toBeNull();
      await log.append([recordAt(1, 0, 't:1', started), recordAt(2, 0, 't:1', done)]);
      await log.append([recordAt(900, 1, 'zz:900', started, { device: 'zz' })]);
      await log.append([recordAt(901, 1, 'aa:901', started, { device: 'aa' })]);
      expect(await log.lastRecord()).toEqual(recordAt(2, 0, 't:1', done));
    });

    it('gives the newest records of its own device, oldest first, and all of them when there are fewer', async () => {
      const log = await open();
      expect(await log.readNewest(2)).toEqual([]);
      const own = [recordAt(1, 0, 't:1', started), recordAt(2, 1, 't:1', done), recordAt(3, 2, 't:1', done)];
      await log.append(own);
      await log.append([recordAt(900, 1, 'zz:900', started, { device: 'zz' })]);
      expect(await log.readNewest(2)).toEqual(own.slice(1));
      expect(await log.readNewest(1_000)).toEqual(own);
      expect(await log.readNewest(0)).toEqual([]);
    });

    it('reads a stream in the order of its device, even where the wall clock went back', async () => {
      const log = await open();
      const first = recordAt(1, 60_000, 't:1', started);
      const second = recordAt(2, 0, 't:1', done);
      await log.append([first, second]);
      expect(await log.readStream('t:1')).toEqual([first, second]);
    });

    it('reads the record that began a turn first, also where another tablet’s clock is behind', async () => {
      const log = await open();
      const start = recordAt(1, 60_000, 't:1', started);
      const early = recordAt(9, 0, 't:1', done, { device: 'other' });
      await log.append([early, start]);
      expect(await log.readStream('t:1')).toEqual([start, early]);
    });

    it('reads no stream into another', async () => {
      const log = await open();
      await log.append([recordAt(1, 0, 't:1', started), recordAt(2, 5, 't:10', started)]);
      expect(await log.readStream('t:1')).toHaveLength(1);
      expect(await log.readStream('nobody')).toEqual([]);
    });

    it('finds what began a turn in a span of wall time, ends included, oldest first', async () => {
      const log = await open();
      const starts = [3, 1, 2].map((minute) => recordAt(minute, minute * 60_000, `t:${minute}`, started));
      await log.append([...starts, recordAt(9, 60_000, 't:1', done)]);
      const minutes = (await log.readStarts('turn')).map(({ sequence }) => sequence);
      expect(minutes).toEqual([1, 2, 3]);
      const { wallMs } = starts[1]!.stamp;
      const some = await log.readStarts('turn', { fromWallMs: wallMs, toWallMs: wallMs + 60_000 });
      expect(some.map(({ sequence }) => sequence)).toEqual([1, 2]);
      expect(await log.readStarts('study')).toEqual([]);
    });

    it('finds the newest starts first, as many as asked', async () => {
      const log = await open();
      await log.append([1, 2, 3].map((minute) => recordAt(minute, minute * 60_000, `t:${minute}`, started)));
      const latest = await log.readLatestStarts('turn', 2);
      expect(latest.map(({ sequence }) => sequence)).toEqual([3, 2]);
    });

    it('reads everything by device and sequence, past the size of one batch', async () => {
      const log = await open();
      const many = Array.from({ length: 2_300 }, (_, place) => recordAt(place + 1, place, 't:1', done));
      await log.append(many);
      expect((await all(log)).map(({ sequence }) => sequence)).toEqual(many.map(({ sequence }) => sequence));
    });
  });
}

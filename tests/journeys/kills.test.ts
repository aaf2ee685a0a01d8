import { appendFileSync, existsSync, readdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from 'vitest';
import { ChainCheck } from '../../src/domain/records/chain-check';
import { seededRandom } from '../../src/statistics/seeded-random';
import { beginFirstTurn, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { Site } from './support/site';
import { Tablet } from './support/tablet';

/** A few in every run; `npm run prove:kills` asks for two hundred. */
const KILLS = Number(process.env.KILLS ?? 6);
/** Half of the kills fall while the page writes as fast as it can, half at a bench's pace. */
const BENCH_PACE_MS = 250;

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
const ready = (page: Page) => page.getByRole('button', { name: /^Part done/ }).waitFor({ timeout: 30_000 });

/**
 * Taps in the page, one after the other: the next one when the frame has said that all is saved. Tells how
 * many were acknowledged as saved, each time.
 */
async function tapAway(page: Page, paceMs: number, acknowledged: (count: number) => void): Promise<void> {
  await page.exposeBinding('acknowledge', (_source, count: number) => acknowledged(count));
  await page.evaluate((pause) => {
    const page = window as typeof window & { acknowledge(count: number): void };
    const mark = document.querySelector<HTMLElement>('.saving')!;
    const whenSaved = () =>
      new Promise<void>((resolve) => {
        if (mark.dataset.saving === 'saved') return resolve();
        const watch = new MutationObserver(() => {
          if (mark.dataset.saving !== 'saved') return;
          watch.disconnect();
          resolve();
        });
        watch.observe(mark, { attributes: true });
      });
    const tapOnce = () => {
      const button = [...document.querySelectorAll('button')].find((each) =>
        each.textContent?.startsWith('Part done'),
      )!;
      const touch = { bubbles: true, isPrimary: true, button: 0, pointerType: 'touch' };
      button.dispatchEvent(new PointerEvent('pointerdown', touch));
      button.dispatchEvent(new PointerEvent('pointerup', touch));
    };
    let count = 0;
    const next = async () => {
      tapOnce();
      await new Promise((resolve) => setTimeout(resolve, 0));
      await whenSaved();
      count += 1;
      page.acknowledge(count);
      setTimeout(next, pause);
    };
    next();
  }, paceMs);
}

describe(`a browser that is killed ${KILLS} times while taps come in`, () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  const random = seededRandom(20260302);
  let acknowledgedInAll = 0;
  let healedInAll = 0;

  beforeAll(async () => {
    await site.start();
    const page = await tablet.start();
    await page.goto(site.url);
    await beginFirstTurn(page, 'K7', 'M', '1:30');
    await saved(page);
    await wait(300);
  });
  afterEach(() => tablet.close());
  afterAll(async () => {
    process.stderr.write(
      `kills ${KILLS}, acknowledged ${acknowledgedInAll}, records healed from the other shelf ${healedInAll}\n`,
    );
    await tablet.discard();
    await site.discard();
  });

  it(
    'has every record that was acknowledged as saved, once, without a gap, each time',
    async () => {
      await tablet.kill();
      let before = 0;
      for (let kill = 1; kill <= KILLS; kill += 1) {
        const page = await tablet.start();
        await page.goto(site.url);
        await ready(page);
        await saved(page);
        const records = await readOwnLog(page);
        const check = new ChainCheck();
        for (const record of records) check.take(record);
        expect(check.breaks, `before kill ${kill}`).toEqual([]);
        expect(records.map(({ sequence }) => sequence)).toEqual(records.map((_, place) => place + 1));
        const done = records.filter(({ fact }) => fact.kind === 'part-done').length;
        expect(done, `before kill ${kill}`).toBeGreaterThanOrEqual(before);

        let acknowledged = 0;
        const pause = kill % 2 === 0 ? BENCH_PACE_MS : 0;
        await tapAway(page, pause, (count) => {
          acknowledged = count;
        });
        await wait(300 + random() * 1_500);
        // Nothing that is said from here on was said before the kill.
        const said = acknowledged;
        await tablet.kill();
        acknowledgedInAll += said;
        before = done + said;
      }
      const page = await tablet.start();
      await page.goto(site.url);
      await ready(page);
      await saved(page);
      const done = (await readOwnLog(page)).filter(({ fact }) => fact.kind === 'part-done').length;
      expect(done).toBeGreaterThanOrEqual(before);
    },
    60_000 + KILLS * 20_000,
  );

  /** What lies on the tablet's disk under one of the two shelves. */
  const shelves = {
    database: () => {
      const folder = path.join(tablet.profile, 'Default/IndexedDB');
      return readdirSync(folder)
        .filter((name) => /\.indexeddb\./.test(name))
        .map((name) => path.join(folder, name));
    },
    journal: () => [path.join(tablet.profile, 'Default/File System')].filter(existsSync),
  };

  it('heals a database that a torn header makes the browser wipe two starts later', async () => {
    // 7 bytes: the header of a LevelDB log record without its payload, as a kill between two writes leaves it.
    const torn = Buffer.from('58cda68b880001', 'hex');
    let page = await tablet.start();
    await page.goto(site.url);
    await ready(page);
    await saved(page);
    const whole = await readOwnLog(page);
    await tablet.close();
    const [folder] = shelves.database().filter((name) => name.endsWith('.leveldb'));
    const logs = readdirSync(folder!)
      .filter((name) => name.endsWith('.log'))
      .sort();
    appendFileSync(path.join(folder!, logs.at(-1)!), torn);
    for (const _start of [1, 2, 3]) {
      page = await tablet.start();
      await page.goto(site.url);
      await ready(page);
      await saved(page);
      expect((await readOwnLog(page)).slice(0, whole.length)).toEqual(whole);
      await tablet.close();
    }
  });

  for (const shelf of ['database', 'journal'] as const) {
    it(`heals a ${shelf} that is wiped from the disk, at every start`, async () => {
      let page = await tablet.start();
      await page.goto(site.url);
      await ready(page);
      await saved(page);
      const whole = await readOwnLog(page);
      await tablet.close();
      for (const _start of [1, 2, 3]) {
        const folders = shelves[shelf]();
        expect(folders.length).toBeGreaterThan(0);
        for (const folder of folders) rmSync(folder, { recursive: true });
        page = await tablet.start();
        await page.goto(site.url);
        await ready(page);
        await saved(page);
        // Opening may add that the page was away; it takes nothing from what was there.
        expect((await readOwnLog(page)).slice(0, whole.length)).toEqual(whole);
        if (shelf === 'database') healedInAll += whole.length;
        await tablet.close();
      }
    });
  }
});

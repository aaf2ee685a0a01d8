import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, inject, it } from 'vitest';
import { violations } from './support/axe';
import { beginFirstTurn, partDone, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { Site } from './support/site';
import { Tablet } from './support/tablet';
import { tapButton } from './support/tap';

describe('a tablet whose storage refuses', () => {
  let site: Site;
  let tablet: Tablet;
  let page: Page;

  beforeEach(async () => {
    site = new Site(inject('dist'));
    tablet = new Tablet();
    await site.start();
    page = await tablet.start();
  });
  afterEach(async () => {
    await tablet.discard();
    await site.discard();
  });

  it('with no database at all says so at once, and records in memory', async () => {
    await page.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('refused', 'SecurityError');
      };
    });
    await page.goto(site.url);
    await page.getByText('This browser keeps nothing: records are lost when the page closes').waitFor();
    await beginFirstTurn(page, 'K7', 'M', '0:05');
    await page.waitForTimeout(1_600);
    await partDone(page);
    await page.locator('.pace-tally-figure', { hasText: /^1$/ }).waitFor();
    expect(await page.locator('.saving').getAttribute('data-saving')).toBe('not-saved');
    expect(await violations(page)).toEqual([]);
  });

  it('short of room, or a tab that forgets, is warned of before a study starts and not elsewhere', async () => {
    await page.addInitScript(() => {
      StorageManager.prototype.estimate = async () => ({ quota: 90_000_000, usage: 41_000_000 });
      Object.defineProperty(navigator, 'standalone', { get: () => false });
    });
    await page.goto(site.url);
    await page.getByText('Who is at the station?').waitFor();
    const little = page.getByText('Only 49.0 MB are left for records on this tablet.');
    const forgetful = page.getByText(/This is a browser tab, and this browser deletes/);
    expect(await little.or(forgetful).count()).toBe(0);
    await page.goto(`${site.url}#/study/new`);
    await little.waitFor();
    await forgetful.waitFor();
    await page.goto(`${site.url}#/records`);
    await page.getByText('49.0 MB, which is little').waitFor();
    await page.getByText('in a browser tab it deletes them after seven days without use').waitFor();
  });

  it('when it is full says not saved, goes on recording, and saves all in order when there is room', async () => {
    await page.goto(site.url);
    await beginFirstTurn(page, 'K7', 'M', '0:05');
    await saved(page);
    await page.evaluate(() => {
      const { add } = IDBObjectStore.prototype;
      const full = window as typeof window & { makeRoom?: () => void };
      full.makeRoom = () => {
        IDBObjectStore.prototype.add = add;
      };
      IDBObjectStore.prototype.add = () => {
        throw new DOMException('no room', 'QuotaExceededError');
      };
    });
    await page.waitForTimeout(1_600);
    await partDone(page);
    await page.waitForTimeout(1_600);
    await partDone(page);
    await page.getByText(/Not saved: 2 records in reserve \(the storage is full: take a copy out/).waitFor();
    expect(await violations(page)).toEqual([]);
    await page.evaluate(() => (window as typeof window & { makeRoom?: () => void }).makeRoom?.());
    await saved(page);
    const done = (await readOwnLog(page)).filter(({ fact }) => fact.kind === 'part-done');
    expect(done).toHaveLength(2);
  });

  it('when it is full and the browser is killed, has what was not saved from the reserve', async () => {
    await page.goto(site.url);
    await beginFirstTurn(page, 'K7', 'M', '0:05');
    await saved(page);
    await page.evaluate(() => {
      IDBObjectStore.prototype.add = () => {
        throw new DOMException('no room', 'QuotaExceededError');
      };
    });
    await page.waitForTimeout(1_600);
    await partDone(page);
    await page.getByText(/Not saved: 1 record in reserve/).waitFor();
    // Chromium writes localStorage to disk a moment after the page has it.
    await page.waitForTimeout(6_000);
    await tablet.kill();
    page = await tablet.start();
    await page.goto(site.url);
    await saved(page);
    await page.locator('.pace-tally-figure', { hasText: /^1$/ }).waitFor();
    const done = (await readOwnLog(page)).filter(({ fact }) => fact.kind === 'part-done');
    expect(done).toHaveLength(1);
  });

  it('when the records cannot be read never shows an empty shop', async () => {
    await page.goto(site.url);
    await beginFirstTurn(page, 'K7', 'M', '0:05');
    await saved(page);
    await page.addInitScript(() => {
      IDBIndex.prototype.getAll = () => {
        throw new DOMException('Internal error opening backing store', 'UnknownError');
      };
    });
    await page.reload();
    await page.getByRole('heading', { name: /could not be read. They have not been deleted/ }).waitFor();
    expect(await page.getByText('Who is at the station?').count()).toBe(0);
    await page.getByRole('link', { name: /Save all records as a file/ }).waitFor();
    expect(await violations(page)).toEqual([]);
  });

  it('that never answers lets work go on in reserve, and has it all when it answers again', async () => {
    await page.goto(site.url);
    await beginFirstTurn(page, 'K7', 'M', '0:05');
    await tapButton(page, /^End turn/);
    await tapButton(page, 'End the turn');
    await saved(page);
    const before = await readOwnLog(page);
    await page.addInitScript(() => {
      if (!sessionStorage.getItem('silent')) return;
      // A request of which nothing is ever heard.
      const silent = Object.create(IDBOpenDBRequest.prototype);
      IDBFactory.prototype.open = () => Object.assign(silent, { addEventListener() {} });
    });
    await page.evaluate(() => sessionStorage.setItem('silent', 'yes'));
    await page.reload();
    await page.getByText('The storage of this tablet is not answering. Nothing has been deleted.').waitFor();
    expect(await violations(page)).toEqual([]);
    await tapButton(page, 'Go on in reserve');
    await beginFirstTurn(page, 'K8', 'N', '0:05');
    await page.waitForTimeout(1_600);
    await partDone(page);
    await page.getByText(/Not saved: 5 records in reserve \(the records are not open/).waitFor();
    await page.evaluate(() => sessionStorage.removeItem('silent'));
    await page.reload();
    await saved(page);
    const after = await readOwnLog(page);
    const isOfBefore = ({ device }: { device: string }) => device === before[0]!.device;
    expect(after.filter(isOfBefore)).toEqual(before);
    expect(after.filter((each) => !isOfBefore(each)).map(({ fact }) => fact.kind)).toEqual([
      'person-added',
      'part-defined',
      'target-set',
      'turn-started',
      'part-done',
    ]);
  });

  it('that stops answering in mid-turn is said not to answer; no tap waits, and all are saved on another handle', async () => {
    await page.goto(site.url);
    await beginFirstTurn(page, 'K7', 'M', '0:05');
    await saved(page);
    await page.evaluate(() => {
      const { transaction } = IDBDatabase.prototype;
      const stuck = window as typeof window & { answer?: () => void };
      stuck.answer = () => {
        IDBDatabase.prototype.transaction = transaction;
      };
      const never = new Promise(() => {});
      const silent = { store: { add: () => never }, commit() {}, done: never };
      IDBDatabase.prototype.transaction = () => silent as never;
    });
    await page.waitForTimeout(1_600);
    await partDone(page);
    await page
      .getByText(/Not saved: 1 record in reserve \(the storage of this tablet is not answering\)/)
      .waitFor();
    await page.waitForTimeout(1_600);
    await partDone(page);
    await page.getByText(/Not saved: 2 records in reserve/).waitFor();
    await page.evaluate(() => (window as typeof window & { answer?: () => void }).answer?.());
    await saved(page);
    const done = (await readOwnLog(page)).filter(({ fact }) => fact.kind === 'part-done');
    expect(done).toHaveLength(2);
  });

  it('whose records a newer release has changed records no more, and says why, also when it is loaded again', async () => {
    await page.goto(site.url);
    await beginFirstTurn(page, 'K7', 'M', '0:05');
    await tapButton(page, /^End turn/);
    await tapButton(page, 'End the turn');
    await saved(page);
    await page.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          const newer = indexedDB.open('pacewright', 99);
          newer.onerror = () => reject(newer.error);
          newer.onsuccess = () => {
            newer.result.close();
            resolve();
          };
        }),
    );
    await tapButton(page, 'Start another turn');
    await tapButton(page, /^K7/);
    await tapButton(page, /^M/);
    await tapButton(page, /^Start/);
    await page.getByText(/A newer release of Pacewright has opened these records in another tab/).waitFor();
    await page.getByText(/lies in reserve and comes to the records at the next start/).waitFor();
    await page.reload();
    await page
      .getByRole('heading', { name: 'A newer release of Pacewright has opened these records.' })
      .waitFor();
  });
});

import { readdirSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { beginFirstTurn, partDone, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { lookIntoCopy, reviewText, takeItIn } from './support/restore-copy';
import { Site } from './support/site';
import { Tablet } from './support/tablet';
import { tap, tapButton } from './support/tap';

describe('an app whose script is gone, from the server and from the tablet', () => {
  const site = new Site(inject('dist'));
  const whole = new Site(inject('dist'));
  const tablet = new Tablet();
  const other = new Tablet();
  let page: Page;
  let before: Awaited<ReturnType<typeof readOwnLog>>;
  let shown = '';
  let file = '';

  beforeAll(async () => {
    await site.start();
    await whole.start();
    page = await tablet.start();
    await page.goto(site.url);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.reload();
    await beginFirstTurn(page, 'K7', 'M', '1:30');
    for (let part = 0; part < 3; part += 1) {
      await page.waitForTimeout(1_600);
      await partDone(page);
    }
    await tapButton(page, /^End turn/);
    await tapButton(page, 'End the turn');
    await saved(page);
    before = await readOwnLog(page);
    shown = await reviewText(page);
  });
  afterAll(async () => {
    await tablet.discard();
    await other.discard();
    await site.discard();
    await whole.discard();
  });

  it('leads straight to where the records are saved', async () => {
    const [script] = readdirSync(path.join(inject('dist'), 'assets')).filter((name) =>
      /^index-.*\.js$/.test(name),
    );
    site.remove(`assets/${script}`);
    await page.evaluate(async (gone) => {
      for (const name of await caches.keys()) {
        const cache = await caches.open(name);
        for (const request of await cache.keys()) if (request.url.includes(gone)) await cache.delete(request);
      }
    }, script!);
    // The browser's own cache holds it too, as long as it likes.
    await (await page.context().newCDPSession(page)).send('Network.clearBrowserCache');
    await page.close();
    page = await tablet.newTab();
    await page.goto(site.url);
    await page.getByText(`${before.length} records found.`).waitFor();
  });

  it('gives every record as a file without the bundle, and changes none', async () => {
    const [download] = await Promise.all([page.waitForEvent('download'), tapButton(page, 'Save the file')]);
    file = path.join(tablet.profile, download.suggestedFilename());
    await download.saveAs(file);
    expect(download.suggestedFilename()).toMatch(/^pacewright-tablet-\w+-\d{4}-\d\d-\d\d-rescued\.txt$/);
    expect(await readOwnLog(page)).toEqual(before);
  });

  it('has the same records and the same figures on another tablet that takes the file in', async () => {
    const second = await other.start();
    await second.goto(whole.url);
    await lookIntoCopy(second, file);
    await takeItIn(second);
    expect(await readOwnLog(second)).toEqual(before);
    expect(await reviewText(second)).toBe(shown);
  });

  it('says that it did not start where nothing was kept on the tablet yet, and leads there too', async () => {
    const fresh = await other.newTab();
    await fresh.goto(site.url);
    await fresh.getByText('The app did not start. Your records have not been deleted.').waitFor();
    await tap(fresh, fresh.getByRole('link', { name: /Save all records as a file/ }));
    await fresh.getByText('There is no record in this browser.').waitFor();
  });

  it('makes no database where there is none: the app would find an empty one in its way', async () => {
    const fresh = await other.newTab();
    await fresh.goto(`${site.url}rescue.html`);
    await fresh.getByText('There is no record in this browser.').waitFor();
    expect(await fresh.evaluate(async () => (await indexedDB.databases()).length)).toBe(0);
  });
});

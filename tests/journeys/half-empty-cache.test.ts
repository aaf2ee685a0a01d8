import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it, vi } from 'vitest';
import { seededRandom } from '../../src/statistics/seeded-random';
import { keptFiles, loseFiles } from './support/caches';
import { beginFirstTurn, partDone, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { openScreen } from './support/restore-copy';
import { Site } from './support/site';
import { Tablet } from './support/tablet';
import { tapButton } from './support/tap';

const ROUNDS = 6;
/** A release whose worker takes over at once and answers every page with nothing. */
const BAD_WORKER = `
self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
self.addEventListener('fetch', (event) => {
  if (event.request.mode === 'navigate') {
    event.respondWith(new Response('<!doctype html><p>blank</p>', { headers: { 'Content-Type': 'text/html' } }));
  }
});`;

describe('a tablet whose kept files are not as they were', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let page: Page;
  let before: Awaited<ReturnType<typeof readOwnLog>>;
  let files: readonly string[] = [];

  /** Works: the app. Rescued: the page that saves all records. Broken: neither. */
  const opened = async (): Promise<'works' | 'rescued' | 'broken'> => {
    const works = page.getByText('Who is at the station?');
    const rescued = page.getByText(`${before.length} records found.`);
    const led = page.getByRole('link', { name: /Save all records as a file/ });
    await works
      .or(rescued)
      .or(led)
      .first()
      .waitFor({ timeout: 15_000 })
      .catch(() => {});
    if (await works.count()) return 'works';
    if (await led.count()) {
      await led.first().click();
      await rescued.waitFor().catch(() => {});
    }
    return (await rescued.count()) ? 'rescued' : 'broken';
  };

  /**
   * Loads the page and waits until another worker has taken it over: the browser looks for a newer one by itself, at
   * times before the page is there, so what listens is in the page from its first moment.
   */
  const loadUntilAnotherTakesOver = async () => {
    await page.goto(site.url);
    await page.waitForFunction(() => 'tookOver' in window);
  };
  const kept = async () => (await keptFiles(page)).map(({ url }) => url);

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
    await page.addInitScript(() => {
      navigator.serviceWorker.addEventListener('controllerchange', () =>
        Object.assign(window, { tookOver: true }),
      );
    });
    await page.goto(site.url);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.reload();
    await beginFirstTurn(page, 'K7', 'M', '1:30');
    await partDone(page);
    await tapButton(page, /^End turn/);
    await tapButton(page, 'End the turn');
    await saved(page);
    before = await readOwnLog(page);
    // The worker’s own mark is no file of the app.
    files = (await kept()).filter((url) => !url.endsWith('in-use'));
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  it('without a network starts, or saves all records without the app, whatever is lost: random half-empty caches', async () => {
    const random = seededRandom(36);
    const outcomes: string[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      const gone = files.filter(() => random() < [0.02, 0.5, 1][round % 3]!);
      // Without a network first: what the worker mends of a load before would bring them back.
      await site.stop();
      await loseFiles(page, gone);
      await page.goto(site.url);
      const outcome = await opened();
      expect(outcome, `without ${gone.join(' ')}`).not.toBe('broken');
      outcomes.push(outcome);
      expect(await readOwnLog(page)).toEqual(before);
      await site.start();
      await page.goto(site.url);
      expect(await opened()).toBe('works');
      await vi.waitFor(async () => expect(await kept()).toEqual(expect.arrayContaining([...files])), 10_000);
    }
    expect(outcomes).toContain('rescued');
  });

  it('says which screen is missing where only that is lost, and leads to the records', async () => {
    const cell = files.filter((url) => /study-and-cell/.test(url));
    expect(cell).not.toEqual([]);
    await site.stop();
    await loseFiles(page, cell);
    await page.goto(site.url);
    await page.getByText('Who is at the station?').waitFor();
    await openScreen(page, 'Cell');
    await page.getByText('This part of the app could not be loaded. Nothing has been deleted.').waitFor();
    await page.getByRole('link', { name: /Save all records as a file/ }).waitFor();
    await site.start();
  });

  it('is well again after a bad release in two loads of the page, with every record', async () => {
    const good = await (await fetch(`${site.url}sw.js`)).text();
    site.put('sw.js', BAD_WORKER);
    await loadUntilAnotherTakesOver();
    await page.goto(site.url);
    await page.getByText('blank').waitFor();
    site.withdraw();
    await loadUntilAnotherTakesOver();
    await page.goto(site.url);
    expect(await opened()).toBe('works');
    expect(await readOwnLog(page)).toEqual(before);
    site.put('sw.js', good);
    await page.goto(site.url);
    expect(await opened()).toBe('works');
  });

  it('is served a script as its worker, or nothing: never a page', async () => {
    const worker = await fetch(`${site.url}sw.js`);
    expect(worker.headers.get('Content-Type')).toMatch(/^text\/javascript/);
    site.remove('sw.js');
    expect((await fetch(`${site.url}sw.js`)).status).toBe(404);
  });
});

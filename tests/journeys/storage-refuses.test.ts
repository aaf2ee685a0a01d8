import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, inject, it } from 'vitest';
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
    expect(await page.locator('.saving').getAttribute('data-state')).toBe('not-saved');
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
    await page.getByText(/Not saved: 2 records in reserve \(QuotaExceededError: no room\)/).waitFor();
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
    await tapButton(page, 'Go on without saving');
    await page.getByText('This browser keeps nothing').waitFor();
  });
});

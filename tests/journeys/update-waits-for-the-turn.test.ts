import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it, vi } from 'vitest';
import { buildRelease } from './support/build-app';
import { beginFirstTurn, partDone, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { Site } from './support/site';
import { Tablet } from './support/tablet';
import { tapButton } from './support/tap';

const notice = 'A newer release is ready.';
const releaseOf = (page: Page) => page.evaluate(() => document.documentElement.dataset.release);
const lookForUpdate = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update().catch(() => {});
  });
/** Until the newer worker is installed and waits. */
async function waits(page: Page): Promise<void> {
  await vi.waitFor(
    async () => {
      const isWaiting = await page.evaluate(
        async () => (await navigator.serviceWorker.ready).waiting !== null,
      );
      expect(isWaiting).toBe(true);
    },
    { timeout: 20_000, interval: 200 },
  );
}

describe('a newer release while a turn runs', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  const second = mkdtempSync(path.join(tmpdir(), 'pacewright-second-'));
  let page: Page;

  beforeAll(async () => {
    buildRelease(second, 'second');
    await site.start();
    page = await tablet.start();
    await page.goto(site.url);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.reload();
    await beginFirstTurn(page, 'K7', 'M', '1:30');
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
    rmSync(second, { recursive: true });
  });

  it('that is only half published is not taken, and the running one stays whole', async () => {
    site.publish(second);
    const [script] = readdirSync(path.join(second, 'assets')).filter((name) => /^index-.*\.js$/.test(name));
    site.remove(`assets/${script}`);
    await lookForUpdate(page);
    await partDone(page);
    await page.reload();
    await page.getByRole('button', { name: /^Part done/ }).waitFor();
    expect(await releaseOf(page)).toBe('first');
    expect(await page.getByText(notice).count()).toBe(0);
  });

  it('is fetched and waits: no notice, no reload, taps go on', async () => {
    site.publish(second);
    await lookForUpdate(page);
    await waits(page);
    await partDone(page);
    await tapButton(page, 'Stop');
    await tapButton(page, /^Go on/);
    await partDone(page);
    await saved(page);
    expect(await releaseOf(page)).toBe('first');
    expect(await page.getByText(notice).count()).toBe(0);
  });

  it('does not take over when the page is loaded again in mid-turn', async () => {
    await page.reload();
    await partDone(page);
    await saved(page);
    expect(await releaseOf(page)).toBe('first');
  });

  it('is offered when the turn has ended, and taken with one tap; every record is still there', async () => {
    await tapButton(page, 'End turn');
    await tapButton(page, 'End the turn');
    await page.getByText(notice).waitFor();
    const before = await readOwnLog(page);
    await tapButton(page, 'Take it now');
    await page.waitForFunction(() => document.documentElement.dataset.release === 'second');
    expect(await readOwnLog(page)).toEqual(before);
    await page.waitForTimeout(500);
    expect(await page.getByText(notice).count()).toBe(0);
  });
});

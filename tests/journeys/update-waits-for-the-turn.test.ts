import { readdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it, vi } from 'vitest';
import { anotherRelease } from './support/another-release';
import { keptFiles, loseFiles } from './support/caches';
import { beginFirstTurn, partDone, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { openScreen } from './support/restore-copy';
import { Site } from './support/site';
import { Tablet } from './support/tablet';
import { tap, tapButton } from './support/tap';

const notice = 'A newer release is ready.';
const releaseOf = (page: Page) => page.evaluate(() => document.documentElement.dataset.release);
const lookForUpdate = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update().catch(() => {});
  });
/** The script that a built release begins with. */
const scriptOf = (dist: string) =>
  readdirSync(path.join(dist, 'assets')).find((name) => /^index-.*\.js$/.test(name))!;
/** Until the worker of this release is installed and waits. */
async function waits(page: Page, dist: string): Promise<void> {
  const script = `assets/${scriptOf(dist)}`;
  await vi.waitFor(
    async () => {
      const isWaiting = await page.evaluate(async (file) => {
        const { installing, waiting } = await navigator.serviceWorker.ready;
        return installing === null && waiting !== null && (await caches.match(file)) !== undefined;
      }, script);
      expect(isWaiting).toBe(true);
    },
    { timeout: 20_000, interval: 100 },
  );
}

describe('a newer release while a turn runs', () => {
  const first = inject('dist');
  const site = new Site(first);
  const tablet = new Tablet();
  const releases = Array.from({ length: 10 }, (_, place) => anotherRelease(first, `release-${place + 1}`));
  const last = releases.at(-1)!;
  let page: Page;
  let other: Page;

  beforeAll(async () => {
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
    for (const folder of releases) rmSync(folder, { recursive: true });
  });

  it('that is only half published is not taken, and the running one stays whole', async () => {
    site.publish(releases[0]!);
    site.remove(`assets/${scriptOf(releases[0]!)}`);
    await lookForUpdate(page);
    await partDone(page);
    await page.reload();
    await page.getByRole('button', { name: /^Part done/ }).waitFor();
    expect(await releaseOf(page)).toBe('first');
    expect(await page.getByText(notice).count()).toBe(0);
  });

  it('and nine more, each taking its forerunner off the server, interrupt nothing: taps go on, every screen opens', async () => {
    const interrupted: string[] = [];
    page.on('pageerror', (error) => interrupted.push(error.message));
    page.on('load', () => interrupted.push('loaded again'));
    const screens = ['Study', 'Cell', 'Review', 'Shop', 'Records'];
    for (const release of releases) {
      site.replace(release);
      await lookForUpdate(page);
      await waits(page, release);
      const screen = screens.shift();
      if (screen) {
        await openScreen(page, screen);
        await page.getByRole('main').locator('section, form, h1, h2').first().waitFor();
        await tap(page, page.getByRole('link', { name: 'Pace' }));
      }
      await partDone(page);
      expect(await page.getByText(notice).count()).toBe(0);
    }
    await tapButton(page, 'Stop');
    await tapButton(page, /^Go on/);
    await partDone(page);
    await saved(page);
    expect(interrupted).toEqual([]);
    expect(await releaseOf(page)).toBe('first');
    expect((await readOwnLog(page)).filter(({ fact }) => fact.kind === 'part-done')).toHaveLength(12);
  });

  it('does not take over when the page is loaded again in mid-turn', async () => {
    await page.reload();
    await partDone(page);
    await saved(page);
    expect(await releaseOf(page)).toBe('first');
  });

  it('is offered when the turn has ended, and taken with one tap; every record is still there', async () => {
    other = await tablet.newTab();
    await other.goto(site.url);
    await other.getByText('This one only reads.').waitFor();
    await page.bringToFront();
    await tapButton(page, /^End turn/);
    await tapButton(page, 'End the turn');
    await page.getByText(notice).waitFor();
    const before = await readOwnLog(page);
    await tapButton(page, 'Take it now');
    await page.waitForFunction(() => document.documentElement.dataset.release === 'release-10');
    expect(await readOwnLog(page)).toEqual(before);
    await page.waitForTimeout(500);
    expect(await page.getByText(notice).count()).toBe(0);
  });

  it('leaves a tab of the release before it whole, though no server has its files any more', async () => {
    expect(await releaseOf(other)).toBe('first');
    await other.bringToFront();
    // The browser's own cache would hide what the app has not kept.
    await loseFiles(other, []);
    await openScreen(other, 'Cell');
    await other.getByRole('main').locator('section, form, h1, h2').first().waitFor();
    expect(await other.getByText(/could not be loaded/).count()).toBe(0);
  });

  it('keeps itself and the one before it, nothing else, and nothing of another origin', async () => {
    const kept = await keptFiles(page);
    const has = (dist: string) => kept.some(({ url }) => url.endsWith(scriptOf(dist)));
    expect([has(last), has(first)]).toEqual([true, true]);
    expect(releases.slice(0, -1).filter(has)).toEqual([]);
    expect(kept.filter(({ url, type }) => !url.startsWith(site.url) || !/basic|default/.test(type))).toEqual(
      [],
    );
  });
});

import { rmSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it, vi } from 'vitest';
import { anotherRelease } from './support/another-release';
import { appOnTablet } from './support/app-on-tablet';
import { keptFiles } from './support/caches';
import { chooseLanguage } from './support/choose-language';
import { tap } from './support/tap';

const tongue = (page: Page) => page.evaluate(() => document.documentElement.lang);
const releaseOf = (page: Page) => page.evaluate(() => document.documentElement.dataset.release);
/** The languages that the tablet has the words of. */
const kept = async (page: Page) =>
  (await keptFiles(page)).flatMap(({ url }) => /language-([a-z]+)-/.exec(url)?.[1] ?? []);

describe('a tablet at which German is spoken', () => {
  const first = inject('dist');
  const next = anotherRelease(first, 'next');
  let page: Page;
  const { site, tablet } = appOnTablet('', (opened) => {
    page = opened;
  });

  beforeAll(async () => {
    await chooseLanguage(page, 'Deutsch');
    await vi.waitFor(async () => expect(await kept(page)).toEqual(['de']), { timeout: 20_000 });
  });
  afterAll(() => rmSync(next, { recursive: true }));
  /** The browser closed and opened again, with the server as it is. */
  async function openAgain(): Promise<void> {
    await tablet.close();
    page = await tablet.start();
    await page.goto(site.url);
    await page.locator('.shell-tablet').waitFor();
  }

  it('keeps its words and those of no other, and speaks it without a network', async () => {
    await site.stop();
    await openAgain();
    expect(await tongue(page)).toBe('de-DE');
    expect(await kept(page)).toEqual(['de']);
  });

  it('is told that Spanish is not on it yet, and goes back to German, all without a network', async () => {
    await chooseLanguage(page, 'Español');
    expect(await tongue(page)).toBe('en');
    await tap(page, page.locator('.shell-tablet'));
    await page.getByText('Español is not on this tablet yet.').waitFor();
    await page.getByRole('button', { name: 'Close' }).click();
    await chooseLanguage(page, 'Deutsch');
    expect(await tongue(page)).toBe('de-DE');
  });

  it('has the words of a newer release with it, before that one is used', async () => {
    site.replace(next);
    await site.start();
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    await vi.waitFor(
      async () => {
        const { waiting } = await page.evaluate(async () => {
          const registration = await navigator.serviceWorker.ready;
          return { waiting: registration.waiting !== null && registration.installing === null };
        });
        expect(waiting).toBe(true);
      },
      { timeout: 20_000 },
    );
    await site.stop();
    await openAgain();
    expect(await releaseOf(page)).toBe('next');
    expect(await tongue(page)).toBe('de-DE');
    await vi.waitFor(async () => expect(await kept(page)).toEqual(['de']));
  });

  it('keeps both where two are spoken', async () => {
    await site.start();
    await chooseLanguage(page, 'Español');
    expect(await tongue(page)).toBe('es-ES');
    await site.stop();
    await chooseLanguage(page, 'Deutsch');
    await chooseLanguage(page, 'Español');
    expect(await tongue(page)).toBe('es-ES');
    expect((await kept(page)).sort()).toEqual(['de', 'es']);
  });
});

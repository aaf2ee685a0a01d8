import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import type { LogRecord } from '../../src/domain/records/log-record';
import { appOnTablet } from './support/app-on-tablet';
import { chooseLanguage } from './support/choose-language';
import { beginFirstTurn, partDone, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { Site } from './support/site';
import { Tablet } from './support/tablet';
import { tap, tapButton } from './support/tap';

const tongue = (page: Page) => page.evaluate(() => document.documentElement.lang);

describe('a tablet that is to speak German', () => {
  let page: Page;
  const { site, tablet } = appOnTablet('', (opened) => {
    page = opened;
  });

  it('loads again in the middle of a turn, which goes on with its parts and asks nothing', async () => {
    await beginFirstTurn(page, 'K7', 'M', '1:30');
    await page.waitForTimeout(2_500);
    await partDone(page);
    await saved(page);
    const before = await readOwnLog(page);
    await chooseLanguage(page, 'Deutsch');
    await page.getByRole('button', { name: /^Teil fertig/ }).waitFor();
    expect(await tongue(page)).toBe('de-DE');
    // The time in between was the part’s own.
    await page.waitForTimeout(2_500);
    await tapButton(page, /^Teil fertig/);
    await saved(page);
    const after = await readOwnLog(page);
    expect(after.slice(0, before.length)).toEqual(before);
    expect(after.slice(before.length).map(({ fact }) => fact.kind)).toContain('part-done');
    expect(await page.locator('.doubt, .settle-doubt').count()).toBe(0);
  });

  it('speaks it in the demo shop too, and after it was closed', async () => {
    await page.goto('about:blank');
    await page.goto(`${site.url}#/demo/records`);
    await page.getByText('Beispielwerkstatt').first().waitFor();
    expect(await tongue(page)).toBe('de-DE');
    await tablet.close();
    page = await tablet.start();
    await page.goto(site.url);
    await page.getByRole('button', { name: /^Teil fertig/ }).waitFor();
  });

  it('goes back to English', async () => {
    await chooseLanguage(page, 'English');
    await page.getByRole('button', { name: /^Part done/ }).waitFor();
    expect(await tongue(page)).toBe('en');
  });

  it('keeps a study that is being timed, with its readings', async () => {
    await page.goto('about:blank');
    await page.goto(`${site.url}#/demo/study/new`);
    await tap(page, page.getByRole('button', { name: /^M / }));
    await page.getByLabel('Operator code').fill('K7');
    await page.getByLabel('Observer').fill('E1');
    await page.getByLabel('The person knows that this is recorded, and why').check();
    await page
      .getByRole('button', { name: 'check a standard' })
      .or(page.getByRole('button', { name: 'set a standard time' }))
      .first()
      .click();
    await page.getByRole('button', { name: 'To the watch' }).click();
    const surface = page.locator('.study-surface').first();
    await surface.waitFor();
    for (let taps = 0; taps < 3; taps += 1) {
      await tap(page, surface);
      await page.waitForTimeout(400);
    }
    const said = await surface.textContent();
    await chooseLanguage(page, 'Deutsch');
    await surface.waitFor();
    expect(await tongue(page)).toBe('de-DE');
    expect((await surface.textContent())?.match(/E\d [^,.]*/)?.[0]).toBe(said?.match(/E\d [^,.]*/)?.[0]);
  });
});

describe('what is recorded', () => {
  const site = new Site(inject('dist'));
  beforeAll(() => site.start());
  afterAll(() => site.discard());

  /** Of a shop that is set up and works a little, without what no two tablets share. */
  async function factsIn(language: string, target: string): Promise<unknown[]> {
    const tablet = new Tablet();
    try {
      const page = await tablet.start();
      await page.addInitScript((chosen) => localStorage.setItem('pacewright-language', chosen), language);
      await page.goto(site.url);
      await page.locator('.pace-add input').first().fill('K7');
      await tap(page, page.locator('.pace-add button[type="submit"]').first());
      const typed = page.locator('[aria-describedby="pace-target-understood"]');
      await typed.fill(target);
      await page.locator('.pace-add', { has: typed }).locator('input').first().fill('M');
      await tap(page, page.locator('.pace-add', { has: typed }).locator('button[type="submit"]'));
      await tap(page, page.locator('.pace-start'));
      await page.locator('.pace-main').waitFor();
      await page.waitForTimeout(2_500);
      await tap(page, page.locator('.pace-main'));
      await saved(page);
      return withoutNames(await readOwnLog(page));
    } finally {
      await tablet.discard();
    }
  }

  it('is the same in every language, to the byte', async () => {
    const english = await factsIn('en', '1.5');
    expect(english.length).toBeGreaterThan(3);
    expect(JSON.stringify(await factsIn('de', '1,5'))).toBe(JSON.stringify(english));
    expect(JSON.stringify(await factsIn('es', '1,5'))).toBe(JSON.stringify(english));
  });
});

/** Facts as they are written, but for random names, and for the moments and the checksums over them. */
function withoutNames(records: readonly LogRecord[]): unknown[] {
  const text = JSON.stringify(records.map(({ fact }) => fact));
  return JSON.parse(
    text.replace(/tablet-\w+/g, 'tablet').replace(/"(\w*(?:Ms|At|Wall\w*))":[\d.]+/g, '"$1":0'),
  );
}

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { focused, leftOut, tabTo } from './support/by-keyboard';
import { saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { Site } from './support/site';
import { Tablet } from './support/tablet';

const BETWEEN_TAPS_MS = 1_600;

describe('with a keyboard alone', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let page: Page;
  const press = (key: string) => page.keyboard.press(key);
  const type = (text: string) => page.keyboard.type(text);
  /** What follows from a tap is drawn a moment after it. */
  const standsOn = (name: RegExp) => expect.poll(async () => (await focused(page)).name).toMatch(name);

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
    await page.goto(site.url);
    await page.getByLabel('Code', { exact: true }).waitFor();
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  it('an operator names the person and the part, and begins', async () => {
    await tabTo(page, /^Code$/);
    await type('K7');
    await press('Enter');
    await tabTo(page, /^Part code/);
    await type('M');
    await tabTo(page, /^Target time/);
    await type('0:02');
    await press('Enter');
    await tabTo(page, /^Start/);
    await press('Enter');
    await page.getByRole('button', { name: /^Part done/ }).waitFor();
    await standsOn(/^Part done/);
  });

  it('taps parts, stops, goes on: after each act the surface has the focus again', async () => {
    for (const key of ['Space', 'Enter']) {
      await page.waitForTimeout(BETWEEN_TAPS_MS);
      await press(key);
    }
    await tabTo(page, /^Stop$/);
    await press('Enter');
    await standsOn(/^Go on/);
    await page.waitForTimeout(BETWEEN_TAPS_MS);
    await press('Enter');
    await standsOn(/^Part done/);
    await saved(page);
    const kinds = (await readOwnLog(page)).map(({ fact }) => fact.kind);
    expect(kinds.slice(-4)).toEqual(['part-done', 'part-done', 'stopped', 'resumed']);
  });

  it('answers a question, and leaves another with Escape', async () => {
    await tabTo(page, /^Previous part/);
    await press('Enter');
    await page.getByRole('button', { name: 'Back', exact: true }).waitFor();
    await page.waitForTimeout(200);
    // Whoever has no pointer stands in the question already.
    expect(await page.evaluate(() => document.activeElement?.closest('.pace-upper') !== null)).toBe(true);
    await press('Escape');
    await page.getByRole('button', { name: 'Back', exact: true }).waitFor({ state: 'detached' });
    await standsOn(/^Part done/);
    await tabTo(page, /^Change part$/);
    await press('Enter');
    await page.waitForTimeout(200);
    await press('Escape');
    await standsOn(/^Part done/);
  });

  it('opens what the tablet keeps for itself, and comes back to where it was opened', async () => {
    await tabTo(page, /^Tablet$/, 'Shift+Tab');
    await press('Enter');
    await page.locator('.tablet-sheet').waitFor();
    await page.waitForTimeout(200);
    expect((await focused(page)).name).toBe('Close');
    await tabTo(page, /Dim/);
    await press('Space');
    await page.locator('html[data-theme="dim"]').waitFor({ state: 'attached' });
    await press('Escape');
    await page.locator('.tablet-sheet').waitFor({ state: 'detached' });
    expect((await focused(page)).name).toBe('Tablet');
  });

  it('ends the turn and reads the own record', async () => {
    await tabTo(page, /^End turn/);
    await press('Enter');
    await page.waitForTimeout(200);
    await tabTo(page, /^End the turn$/);
    await press('Enter');
    await page.getByRole('heading', { name: 'Your own record' }).waitFor();
  });

  it('an engineer times elements', async () => {
    await page.goto('about:blank');
    await page.goto(`${site.url}#/demo/study/new`);
    await page.getByRole('button', { name: /^M WD-1310/ }).waitFor();
    await tabTo(page, /^M WD-1310/);
    await press('Enter');
    await tabTo(page, /^one after the other/);
    await press('Enter');
    await tabTo(page, /^Operator code/);
    await type('K7');
    await tabTo(page, /^Observer/);
    await type('E1');
    await tabTo(page, /^improve the method/);
    await press('Enter');
    await tabTo(page, /^The person knows/);
    await press('Space');
    await tabTo(page, /^To the watch/);
    await press('Enter');
    await page.locator('.study-surface').waitFor();
    await page.waitForTimeout(300);
    if (!/^Start/.test((await focused(page)).name)) await tabTo(page, /^Start/);
    for (let tap = 0; tap < 4; tap += 1) {
      await press('Enter');
      await page.waitForTimeout(700);
    }
    await page.getByText('4 W2 walk to bench').waitFor();
    await tabTo(page, /^Rating 110$/, 'Shift+Tab');
    await press('Enter');
    await tabTo(page, /^End study/);
    await press('Enter');
    await tabTo(page, /^End it now/);
    await press('Enter');
    await page.getByRole('heading', { name: 'Study summary sheet' }).waitFor();
  });

  it('a foreman opens the working of a figure and comes back to the figure', async () => {
    await page.goto('about:blank');
    await page.goto(`${site.url}#/demo/review`);
    await page.getByText(/282 good/).waitFor();
    await tabTo(page, /^135$/);
    await press('Enter');
    await page.getByRole('dialog').waitFor();
    await press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    expect((await focused(page)).name).toBe('135');
  });

  it('nobody is caught or left out: the Tab key comes to everything on a screen, and round', async () => {
    for (const place of ['pace', 'study', 'study/new', 'cell', 'review', 'review/weeks', 'shop', 'records']) {
      await page.goto('about:blank');
      await page.goto(`${site.url}#/demo/${place}`);
      await page.locator('main > *').first().waitFor();
      await page.waitForTimeout(1_000);
      expect([place, await leftOut(page)]).toEqual([place, []]);
    }
  });
});

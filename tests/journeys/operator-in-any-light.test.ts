import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { violations } from './support/axe';
import { downloadedText } from './support/download';
import { beginFirstTurn, partDone, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { Site } from './support/site';
import { landscape, portrait, Tablet } from './support/tablet';
import { tap, tapAt, tapButton } from './support/tap';

/** Of a ten-inch tablet: 149 pixels of the page an inch. */
const PX_A_MM = 149 / 25.4;
const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

async function smallestSideMm(page: Page, selector: string): Promise<number> {
  const boxes = await page.locator(selector).evaluateAll((all) =>
    all.map((each) => {
      const { width, height } = each.getBoundingClientRect();
      return Math.min(width, height);
    }),
  );
  expect(boxes.length).toBeGreaterThan(0);
  return Math.min(...boxes) / PX_A_MM;
}

/** What a keyboard-wedge scanner does: keys in one go, and Enter. */
async function scan(page: Page, text: string): Promise<void> {
  await page.evaluate((typed) => {
    for (const key of [...typed, 'Enter']) {
      const where = document.activeElement ?? document.body;
      where.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
    }
  }, text);
}

const kinds = async (page: Page) => (await readOwnLog(page)).map(({ fact }) => fact.kind);
const count = async (page: Page, kind: string) => (await kinds(page)).filter((each) => each === kind).length;

describe('an operator at a tablet of their own making', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let page: Page;

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
    await page.goto(site.url);
    await beginFirstTurn(page, 'K7', 'M', '0:02');
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  it('has every light and either hand in both orientations, with buttons for a glove and no fault that axe can find', async () => {
    for (let part = 0; part < 6; part += 1) {
      await wait(1_700);
      await partDone(page);
    }
    await page.locator('.pace-outlook').waitFor();
    for (const viewport of [landscape, portrait]) {
      await page.setViewportSize(viewport);
      for (const [light, hand] of [
        ['Dim', 'Left'],
        ['Sunlight', 'Right'],
      ] as const) {
        await tapButton(page, 'Tablet');
        await tapButton(page, light);
        await page.getByRole('button', { name: hand, exact: true }).scrollIntoViewIfNeeded();
        await tapButton(page, hand);
        expect(await violations(page)).toEqual([]);
        await tapButton(page, 'Tablet');
        expect(await violations(page)).toEqual([]);
        expect(await smallestSideMm(page, '.pace-main, .pace-stop')).toBeGreaterThanOrEqual(25 * 0.75);
        expect(await smallestSideMm(page, '.pace-main')).toBeGreaterThanOrEqual(25);
        expect(await smallestSideMm(page, '.pace-seconds .button, .pace-outlook')).toBeGreaterThanOrEqual(15);
        const [main, stop] = await Promise.all([
          page.locator('.pace-main').boundingBox(),
          page.locator('.pace-stop').boundingBox(),
        ]);
        // Under the thumb of the hand that taps.
        expect(hand === 'Left' ? main!.x < stop!.x : main!.x > stop!.x).toBe(true);
      }
    }
    await page.setViewportSize(landscape);
    await page.reload();
    await page.locator('html[data-theme="sun"][data-hand="right"]').waitFor();
  });

  it('chooses the part with a scanner, and taps with a pedal and with any key; no scan is a tap', async () => {
    await tapButton(page, 'Change part');
    await tapButton(page, 'Another part');
    await page.getByLabel('Part code').fill('WD-1960');
    await tapButton(page, 'Add part');
    await page.getByText('K7 · WD-1960').waitFor();
    await wait(1_700);
    const before = await count(page, 'part-done');
    await scan(page, 'M');
    await page
      .getByText(/^Scanned: M from now on/)
      .first()
      .waitFor();
    await scan(page, 'x'.repeat(10_000));
    await page.getByText('Scanned text is too long').first().waitFor();
    await scan(page, 'No such part');
    await page.getByText('no part has this code').first().waitFor();
    await saved(page);
    expect(await count(page, 'part-done')).toBe(before);
    for (const key of ['PageDown', 'b']) {
      await page.keyboard.press(key);
      await wait(1_700);
    }
    await saved(page);
    expect(await count(page, 'part-done')).toBe(before + 2);
  });

  it('loses nothing of forty taps in a row, and makes no forty parts of them', async () => {
    const before = await count(page, 'part-done');
    const box = (await page.locator('.pace-main').boundingBox())!;
    // Looked for from the first tap on: the last one may come so late that it is a part again.
    const answer = page.getByText('Right after the tap before: not counted so far').first().waitFor();
    for (let touch = 0; touch < 40; touch += 1) await tapAt(page, box.x + 50, box.y + 50);
    await answer;
    await saved(page);
    const done = (await readOwnLog(page)).filter(({ fact }) => fact.kind === 'part-done');
    expect(done.length).toBe(before + 40);
    const tookMs = done.at(-1)!.stamp.monoMs - done[before]!.stamp.monoMs;
    const shown = Number(await page.locator('.pace-tally-figure').first().innerText());
    // A part takes 1.5 s at least, or the tap is one that bounced.
    expect(shown - before).toBeGreaterThanOrEqual(1);
    expect(shown - before).toBeLessThanOrEqual(1 + Math.floor(tookMs / 1_500));
  });

  it('goes on with a part that was retired while it is in hand', async () => {
    await tap(page, page.getByRole('link', { name: 'Shop', exact: true }));
    await tapButton(page, 'Change part M');
    await page.getByRole('button', { name: 'Retire this part' }).scrollIntoViewIfNeeded();
    await tapButton(page, 'Retire this part');
    await tap(page, page.getByRole('link', { name: /^Pace/ }));
    await page.getByText('K7 · M').waitFor();
    const before = await count(page, 'part-done');
    await partDone(page);
    await saved(page);
    expect(await count(page, 'part-done')).toBe(before + 1);
  });

  it('takes the last 90 days along as a file', async () => {
    await tapButton(page, /^End turn/);
    await tapButton(page, 'End the turn');
    const file = await downloadedText(page, page.getByRole('button', { name: /^The last 90 days of K7/ }));
    expect(file.split('\r\n')[0]).toContain('net_time_s');
    expect(file.trim().split('\r\n').length).toBeGreaterThan(8);
    await page.getByRole('button', { name: 'Start another turn' }).scrollIntoViewIfNeeded();
    await tapButton(page, 'Start another turn');
  });

  it('stays on Pace at once when a supervisor keeps the tablet there, until the PIN is given', async () => {
    const sheet = page.getByRole('region', { name: 'This tablet' });
    const others = page.getByRole('navigation');
    const press = async (name: string) => {
      await sheet.getByRole('button', { name }).scrollIntoViewIfNeeded();
      await tap(page, sheet.getByRole('button', { name }));
    };
    await tapButton(page, /^WD-1960/);
    await tapButton(page, /^Start/);
    await tapButton(page, 'Tablet');
    await press('Set the PIN');
    await sheet.getByLabel('New PIN, 4 to 12 digits').fill('4711');
    await sheet.getByLabel('The same again').fill('4711');
    await press('Set the PIN');
    await press('Keep this tablet on Pace');
    await others.waitFor({ state: 'hidden' });
    await page.goto(`${site.url}#/records`);
    await page.getByText('K7 · WD-1960').waitFor();
    expect(await others.isVisible()).toBe(false);
    expect(await violations(page)).toEqual([]);
    await sheet.getByLabel('PIN', { exact: true }).fill('4711');
    await press('Unlock');
    await sheet.getByText('every screen can be used until Pace is opened again').waitFor();
    await others.waitFor();
    await press('Lock again');
    await others.waitFor({ state: 'hidden' });
    await sheet.getByLabel('PIN', { exact: true }).fill('4711');
    await press('Unlock');
    await press('Let it go everywhere again');
    await others.waitFor();
    // Nobody is thrown out of the part in hand.
    await page.getByText('K7 · WD-1960').waitFor();
  });
});

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { readReadingsTable } from '../../src/exchange/read-readings-table';
import { appOnTablet } from './support/app-on-tablet';
import { downloadedText } from './support/download';
import { saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { portrait } from './support/tablet';
import { tap, tapButton } from './support/tap';

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** Four elements of a cell, made up for this journey; the last is the machine's. */
const elements = [
  { name: 'Unload', breakPoint: 'part on bench', machine: false, ms: 420 },
  { name: 'Load', breakPoint: 'clamp clicks', machine: false, ms: 530 },
  { name: 'Inspect', breakPoint: 'gauge down', machine: false, ms: 610 },
  { name: 'Bore', breakPoint: 'spindle stops', machine: true, ms: 380 },
];
const CYCLES = 5;
/** The foreign element falls into the third cycle's inspection. */
const FOREIGN_MS = 450;

describe('an engineer with an empty shop', () => {
  let page: Page;
  const { site } = appOnTablet(
    '#/study',
    (opened) => {
      page = opened;
    },
    portrait,
  );

  it('prepares a method of four elements, and cannot start before the person was told', async () => {
    await tapButton(page, 'New study');
    await page.getByLabel('Code of the part').fill('M');
    await tapButton(page, 'Add this part');
    for (const { name, breakPoint, machine } of elements) {
      await tapButton(page, 'Add an element');
      await page.getByLabel('Element', { exact: true }).fill(name);
      await page.getByLabel(/^Break point/).fill(breakPoint);
      if (machine)
        await tap(
          page,
          page
            .getByRole('radio', { name: 'machine' })
            .or(page.getByRole('button', { name: 'machine', exact: true }))
            .first(),
        );
      await tapButton(page, 'Done');
    }
    await page.getByLabel('Operator code').fill('K7');
    await page.getByLabel('Observer').fill('E1');
    // Neither a look at another screen nor a reload costs anything of what was typed.
    await tap(page, page.getByRole('link', { name: 'Pace', exact: true }));
    await page.reload();
    await tap(page, page.getByRole('link', { name: 'Study', exact: true }));
    await tapButton(page, 'Go on preparing');
    await page.getByText('clamp clicks').waitFor();
    await page.getByLabel('Allowance, %', { exact: true }).fill('14');
    const toTheWatch = page.getByRole('button', { name: 'To the watch' });
    await toTheWatch.scrollIntoViewIfNeeded();
    await tapButton(page, 'set a standard time');
    await tap(page, toTheWatch);
    await page.getByText('The person has to know before the first tap').waitFor();
    await page.getByLabel('The person knows that this is recorded, and why').check();
    await toTheWatch.scrollIntoViewIfNeeded();
    await tap(page, toTheWatch);
    await page.getByRole('button', { name: /^Start/ }).waitFor();
  });

  it('times five cycles of four elements with a foreign element, with one tap a break point', async () => {
    const surface = page.locator('.study-surface');
    const place = await surface.boundingBox();
    await tap(page, surface);
    for (let cycle = 1; cycle <= CYCLES; cycle += 1) {
      for (const { name, ms } of elements) {
        await surface.filter({ hasText: name }).waitFor();
        if (cycle === 3 && name === 'Inspect') {
          await wait(200);
          await tapButton(page, /^Foreign/);
          await tapButton(page, 'talk');
          await wait(FOREIGN_MS);
          await tap(page, surface);
        }
        if (name === 'Load') await tapButton(page, 'Rating 110');
        // The machine runs: what the pad judges now is the inspection that just ended.
        else if (name === 'Bore' && cycle === CYCLES) await tapButton(page, 'Rating 90');
        else if (name === 'Inspect') await tapButton(page, 'Rating 100');
        await wait(ms);
        await tap(page, surface);
      }
      // The place of the tap never moves.
      expect(await surface.boundingBox()).toEqual(place);
    }
    await tapButton(page, 'End study');
    await tapButton(page, 'End it now');
    await saved(page);
    await page.getByRole('heading', { name: 'Study summary sheet' }).waitFor();
  });

  it('saves a table that equals what was tapped, to the millisecond', async () => {
    const button = page.getByRole('button', { name: 'Save the readings as a table (CSV)' });
    const table = readReadingsTable(await downloadedText(page, button));
    expect(table.ok).toBe(true);
    if (!table.ok) return;

    const log = await readOwnLog(page);
    expect(log.filter(({ fact }) => fact.kind === 'person-added').map(({ fact }) => fact)).toEqual([
      { kind: 'person-added', code: 'K7' },
    ]);
    const taps = log.filter(({ fact }) =>
      ['study-started', 'element-ended', 'foreign-began', 'foreign-ended'].includes(fact.kind),
    );
    const expected: { element: string; cycle: number; ms: number }[] = [];
    let began = taps[0]!.stamp.monoMs;
    let apart = 0;
    let foreignBegan = 0;
    let done = 0;
    for (const { fact, stamp } of taps.slice(1)) {
      const cycle = Math.floor(done / elements.length) + 1;
      if (fact.kind === 'foreign-began') foreignBegan = stamp.monoMs;
      else if (fact.kind === 'foreign-ended') {
        apart = stamp.monoMs - foreignBegan;
        expected.push({ element: 'talk', cycle, ms: apart });
      } else {
        const element = elements[done % elements.length]!.name;
        expected.push({ element, cycle, ms: stamp.monoMs - began - apart });
        began = stamp.monoMs;
        apart = 0;
        done += 1;
      }
    }
    expect(done).toBe(CYCLES * elements.length);
    const found = table.rows.map(({ element, cycle, observedMs }) => ({ element, cycle, ms: observedMs }));
    expect(found).toEqual(expected);
    const ratings = new Map(table.rows.map(({ element, ratingPct }) => [element, ratingPct]));
    expect([...ratings]).toEqual([
      ['Unload', 100],
      ['Load', 110],
      ['Inspect', 90],
      ['Bore', 100],
      ['talk', 100],
    ]);
  });

  it('finds the study again after a reload with the server stopped', async () => {
    await page.reload();
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await site.stop();
    await page.goto(`${site.url}#/study`);
    await page.reload();
    await tap(page, page.getByRole('main').getByRole('link').first());
    await page.getByRole('heading', { name: 'Study summary sheet' }).waitFor();
    await site.start();
  });

  it('opens the app on the watch while a study is timed and no turn runs', async () => {
    await page.goto(`${site.url}#/study`);
    await tapButton(page, 'New study');
    await tapButton(page, /^M/);
    await page.getByLabel('Operator code').fill('K7');
    await page.getByLabel('Observer').fill('E1');
    const toTheWatch = page.getByRole('button', { name: 'To the watch' });
    await toTheWatch.scrollIntoViewIfNeeded();
    await tapButton(page, 'set a standard time');
    await page.getByLabel('The person knows that this is recorded, and why').check();
    await tap(page, toTheWatch);
    await tap(page, page.getByRole('button', { name: /^Start/ }));
    await page.locator('.study-surface', { hasText: 'Unload' }).waitFor();
    await saved(page);
    await page.goto('about:blank');
    await page.goto(site.url);
    await page.locator('.study-surface', { hasText: 'Unload' }).waitFor();
    expect(new URL(page.url()).hash).toBe('#/study');
  });
});

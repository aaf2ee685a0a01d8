import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { top } from '../../.config/prepare.mjs';
import { readOwnLog } from './support/read-own-log';
import { Site } from './support/site';
import { Tablet } from './support/tablet';
import { tap } from './support/tap';

const fixture = (name: string) => path.join(top, 'fixtures/published', name);

/** Published studies and the standard time their books print, in minutes, to the digits printed. */
const published = [
  {
    file: 'heizer-10-2-study.csv',
    source: 'Heizer & Render, Operations Management, 11th ed., Example 10.2',
    standard: 18.07,
    digits: 2,
  },
  {
    file: 'heizer-10-23-study.csv',
    source: 'Heizer & Render, Operations Management, 11th ed., Problem 10.23',
    standard: 5.4,
    digits: 1,
  },
  {
    file: 'stevenson-3-study.csv',
    source: 'Stevenson, Operations Management, 14th ed., p. 332, problem 3',
    standard: 4.33,
    digits: 2,
  },
  {
    file: 'krajewski-h-1-study.csv',
    source: 'Krajewski, Ritzman & Malhotra, Operations Management, Supplement H, Problem 1',
    standard: 48.94,
    digits: 2,
  },
];

describe('a readings table taken in through the Records screen', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  const folder = mkdtempSync(path.join(tmpdir(), 'pacewright-tables-'));
  let page: Page;

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
    rmSync(folder, { recursive: true });
  });

  async function take(file: string): Promise<void> {
    await page.goto(`${site.url}#/records`);
    await page.getByLabel('Choose a table …').setInputFiles(file);
  }

  for (const { file, source, standard, digits } of published) {
    it(`shows the printed standard time of ${source}: ${standard} min`, async () => {
      await take(fixture(file));
      await page.waitForURL(/#\/study/);
      await tap(page, page.getByRole('main').getByRole('link').first());
      const figure = page.getByRole('button', { name: /^Standard time ST: / }).first();
      await figure.waitFor();
      const shown = Number(/: ([\d.]+)/.exec((await figure.getAttribute('aria-label'))!)![1]);
      expect(shown.toFixed(digits)).toBe(standard.toFixed(digits));
    });
  }

  /** In view, and told to those who do not see: an answer below the fold is none. */
  const isSeen = (said: Element) => {
    const { top: from, bottom: to } = said.getBoundingClientRect();
    const view = document.querySelector('main')!.getBoundingClientRect();
    return said.closest('[role="alert"]') !== null && from >= view.top && to <= view.bottom;
  };

  const header = 'study,cycle,element,observed_s';
  const bad: [name: string, content: string | Buffer, says: RegExp][] = [
    ['a missing column', 'study,cycle,observed_s\nA,1,2.5\n', /Line 1, column element/],
    ['a text where a number belongs', `${header}\nA,1,Load,quick\n`, /Line 2, column observed_s/],
    [
      'a machine element rated 110',
      `${header},work,rating_pct\nA,1,Bore,2.5,machine,110\n`,
      /Line 2, column rating_pct/,
    ],
    ['a negative time', `${header}\nA,1,Load,2.5\nA,2,Load,-2.5\n`, /Line 3, column observed_s/],
    ['0 bytes', '', /Line 1, column 1: the file is empty/],
    ['a picture renamed .csv', readFileSync(path.join(top, 'src/public/icon-192.png')), /Line 1, column 1/],
  ];
  for (const [name, content, says] of bad) {
    it(`with ${name} is refused in a sentence with line and column, and nothing is taken`, async () => {
      const file = path.join(folder, 'table.csv');
      writeFileSync(file, content);
      await page.goto(site.url);
      const before = (await readOwnLog(page)).length;
      await take(file);
      const said = page.getByText(says).first();
      await said.waitFor();
      await expect.poll(() => said.evaluate(isSeen)).toBe(true);
      expect((await readOwnLog(page)).length).toBe(before);
    });
  }

  it('keeps its answer in view while what is counted late makes the page grow, until the person moves it', async () => {
    const file = path.join(folder, 'late.csv');
    writeFileSync(file, '');
    await page.goto(site.url);
    await take(file);
    const said = page.getByText(/the file is empty/);
    await expect.poll(() => said.evaluate(isSeen)).toBe(true);
    const grow = (pixels: number) =>
      page.locator('.records-give').evaluate((above, height) => {
        above.style.paddingBottom = `${height}px`;
      }, pixels);
    await grow(900);
    await expect.poll(() => said.evaluate(isSeen)).toBe(true);
    await page.mouse.move(640, 400);
    await page.mouse.wheel(0, -300);
    await expect.poll(() => said.evaluate(isSeen)).toBe(false);
    const place = () => page.locator('main').evaluate((main) => main.scrollTop);
    const moved = await place();
    await grow(1_200);
    // Two frames: an observer of sizes has been called by then.
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    expect(await place()).toBe(moved);
  });
});

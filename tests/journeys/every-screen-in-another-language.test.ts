import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { cut, leftInEnglish } from './support/language-faults';
import { Site } from './support/site';
import { landscape, portrait, Tablet } from './support/tablet';
import { tap } from './support/tap';

/** What if, on one part: so many changes that they fill lines, a second machine among them. */
async function trySeveral(page: Page): Promise<void> {
  await page.evaluate(() => document.querySelector('main')!.scrollTo(0, 0));
  await tap(page, page.locator('.cell-tabs button').nth(1));
  await tap(page, page.locator('.cell-parts button').nth(1));
  for (const more of [1, 3, 5, 9, 11]) {
    const button = page.locator('.cell-stepper button').nth(more);
    await button.evaluate((own) => own.scrollIntoView({ block: 'center' }));
    await tap(page, button);
  }
  await page.waitForTimeout(1_500);
}

/** The screen at this address, with all that lies behind its titles. */
async function open(page: Page, url: string, hash: string): Promise<void> {
  // A page of its own: between the two shops the app would load itself again.
  await page.goto('about:blank');
  await page.goto(`${url}#/${hash}`);
  await page.locator('main > *').first().waitFor();
  await page.waitForTimeout(700);
}

type Look = (more?: string) => Promise<void>;

async function walkEmptyShop(page: Page, url: string, look: Look): Promise<void> {
  for (const screen of ['pace', 'study', 'cell', 'review', 'shop', 'records', 'study/new']) {
    await open(page, url, screen);
    await look();
  }
  expect(await page.evaluate(() => document.documentElement.dir)).toBe('rtl');
}

async function walkFullShop(page: Page, url: string, look: Look): Promise<void> {
  for (const screen of [
    'pace',
    'study',
    'study/new',
    'study/standard-data',
    'study/paper',
    'shop',
    'records',
  ]) {
    await open(page, url, `demo/${screen}`);
    await look();
  }
  for (const place of ['', '/weeks', '/before-after', '/promises']) {
    await open(page, url, `demo/review${place}`);
    await page.waitForTimeout(1_500);
    await look();
  }
  await open(page, url, 'demo/study');
  for (const link of [0, 1, 5, 6]) {
    const found = page.locator('main a').nth(link);
    await found.scrollIntoViewIfNeeded();
    await tap(page, found);
    await page.waitForTimeout(900);
    await look();
    await open(page, url, 'demo/study');
  }
}

async function walkCell(page: Page, url: string, look: Look): Promise<void> {
  await open(page, url, 'demo/cell');
  for (const tab of [0, 1, 2, 3]) {
    await tap(page, page.locator('main button').nth(tab));
    await page.waitForTimeout(1_200);
    await look(`tab ${tab}`);
  }
  await trySeveral(page);
  await look('with a change that is tried');
}

/** What the tablet keeps for itself, and a turn that runs and stands still. */
async function walkPace(page: Page, url: string, look: Look): Promise<void> {
  await open(page, url, 'demo/pace');
  await tap(page, page.locator('.shell-tablet'));
  await page.locator('.tablet-sheet').waitFor();
  await look('the tablet');
  await tap(page, page.locator('.shell-tablet'));
  await page.evaluate(() => document.querySelector('main')!.scrollTo(0, 0));
  await tap(page, page.locator('.pace-choice').first());
  await tap(page, page.locator('.pace-choice').last());
  await tap(page, page.locator('.pace-start'));
  await page.locator('.pace-stop').waitFor();
  await look('a turn that runs');
  await page.waitForTimeout(1_000);
  await tap(page, page.locator('.pace-controls button').first());
  await page.waitForTimeout(300);
  await look('a question');
  await tap(page, page.locator('.pace-stop'));
  await page.waitForTimeout(1_600);
  await look('a turn that stands still');
}

/** In the language that is none: its words are half as long again, run from right to left, and no letter is English. */
describe('in other words, from right to left', () => {
  const site = new Site(inject('dist'));
  beforeAll(() => site.start());
  afterAll(() => site.discard());

  it.each(Object.entries({ landscape, portrait }))(
    'leaves no word in English and cuts none on any screen, in %s',
    async (_, viewport) => {
      const tablet = new Tablet();
      const found: string[] = [];
      try {
        const page = await tablet.start(viewport);
        await page.addInitScript(() => localStorage.setItem('pacewright-language', 'pseudo'));
        const look = async (more = '') => {
          await page.evaluate(() => {
            for (const title of document.querySelectorAll('details')) title.open = true;
          });
          await page.waitForTimeout(300);
          const faults = [...(await leftInEnglish(page)), ...(await cut(page))];
          found.push(...faults.map((fault) => `${new URL(page.url()).hash} ${more}: ${fault}`));
        };
        for (const walk of [walkEmptyShop, walkFullShop, walkCell, walkPace])
          await walk(page, site.url, look);
      } finally {
        await tablet.discard();
      }
      expect(found).toEqual([]);
    },
  );
});

describe.each(['de', 'es'])('the cell as it is spoken, standing: %s', (language) => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let page: Page;

  beforeAll(async () => {
    await site.start();
    page = await tablet.start(portrait);
    await page.addInitScript((spoken) => localStorage.setItem('pacewright-language', spoken), language);
    await page.goto(`${site.url}#/demo/cell`);
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  it('cuts no word and no table, with two machines beside one', async () => {
    await page.locator('.cell-tabs').waitFor();
    await trySeveral(page);
    expect(await page.locator('.cell-changes button').count()).toBe(5);
    expect(await cut(page)).toEqual([]);
    const wide = await page
      .locator('.cell table')
      .evaluateAll((tables) =>
        tables
          .filter((table) => table.scrollWidth > table.parentElement!.clientWidth)
          .map((table) => table.textContent),
      );
    expect(wide).toEqual([]);
  });
});

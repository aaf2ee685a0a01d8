import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { violations } from './support/axe';
import { beginFirstTurn } from './support/pace-steps';
import { Site } from './support/site';
import { landscape, portrait, Tablet } from './support/tablet';
import { tap, tapButton } from './support/tap';

/** How far the page itself can be scrolled: not at all, only what the frame holds. */
const beyond = (page: Page) =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth, scrollHeight, clientHeight } = document.documentElement;
    return { sideways: scrollWidth - clientWidth, down: scrollHeight - clientHeight };
  });

for (const [name, viewport] of Object.entries({ landscape, portrait })) {
  describe(`every screen in ${name}`, () => {
    const site = new Site(inject('dist'));
    const tablet = new Tablet();
    let page: Page;

    beforeAll(async () => {
      await site.start();
      page = await tablet.start(viewport);
      await page.goto(site.url);
    });
    afterAll(async () => {
      await tablet.discard();
      await site.discard();
    });

    async function holds(): Promise<void> {
      await page.waitForTimeout(300);
      expect(await violations(page)).toEqual([]);
      expect(await beyond(page)).toEqual({ sideways: 0, down: 0 });
    }

    it('has no fault that axe can find in an empty shop', async () => {
      for (const screen of ['Pace', 'Study', 'Cell', 'Review', 'Shop', 'Records']) {
        await tap(page, page.getByRole('link', { name: screen, exact: true }));
        await holds();
      }
    });

    it('has none while a turn runs, stands still, and has ended', async () => {
      await tap(page, page.getByRole('link', { name: 'Pace', exact: true }));
      await beginFirstTurn(page, 'K7', 'M', '1:30');
      await holds();
      await tapButton(page, 'Stop');
      await holds();
      await page.waitForTimeout(1_600);
      await tapButton(page, /^Go on/);
      await tapButton(page, 'End turn');
      await holds();
      await tapButton(page, 'End the turn');
      await holds();
    });

    it('has none in a shop full of records', async () => {
      await page.goto(`${site.url}#/demo/pace`);
      await page.getByText('Demo shop: invented records').waitFor();
      for (const screen of ['Pace', 'Study', 'Cell', 'Review', 'Shop', 'Records']) {
        await tap(page, page.getByRole('link', { name: screen, exact: true }));
        await page.waitForTimeout(500);
        await holds();
      }
      await tap(page, page.getByRole('link', { name: 'Review', exact: true }));
      for (const place of ['The weeks', 'Before and after', 'Promises', 'The day']) {
        await tap(page, page.getByRole('link', { name: place, exact: true }));
        await page.waitForTimeout(300);
        // What is behind a title is part of the screen too.
        await page.evaluate(() => {
          for (const more of document.querySelectorAll('details')) more.open = true;
        });
        await holds();
      }
      await tap(page, page.getByRole('link', { name: 'Study', exact: true }));
      await tap(page, page.getByRole('main').getByRole('link').first());
      await page.getByRole('heading', { name: 'Study summary sheet' }).waitFor();
      await holds();
      for (const place of ['new', 'standard-data', 'paper']) {
        await page.goto(`${site.url}#/demo/study/${place}`);
        await page.waitForTimeout(500);
        await holds();
      }
      await page.goto(`${site.url}#/demo/study`);
      const standard = page.getByRole('link', { name: /^Standard of/ }).first();
      await standard.scrollIntoViewIfNeeded();
      await tap(page, standard);
      await page.getByRole('heading', { name: 'Analysis of studies' }).waitFor();
      await holds();
      for (const tab of ['What if', 'Lead time', 'People and machines']) {
        await tap(page, page.getByRole('link', { name: 'Cell', exact: true }));
        await tap(page, page.getByRole('button', { name: tab }));
        await page.waitForTimeout(500);
        await holds();
      }
      await page.goto(`${site.url}#/demo/study/new`);
      await holds();
    });
  });
}

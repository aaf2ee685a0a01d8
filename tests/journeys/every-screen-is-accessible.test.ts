import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { contrastViolations, violations } from './support/axe';
import { walkCell, walkDemo, walkPace, walkStudy } from './support/every-state';
import { Site } from './support/site';
import { landscape, portrait, Tablet } from './support/tablet';

/** How far the page itself can be scrolled: not at all, only what the frame holds. */
const beyond = (page: Page) =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth, scrollHeight, clientHeight } = document.documentElement;
    return { sideways: scrollWidth - clientWidth, down: scrollHeight - clientHeight };
  });

const inLight = (page: Page, light: string) =>
  page.evaluate((theme) => {
    document.documentElement.dataset.theme = theme;
  }, light);

describe('every screen, in every state that a tap leads to', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let page: Page;

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  /** All rules lying and standing, in a light each; in the third those that light can break. */
  async function holds(state: string): Promise<void> {
    for (const [light, viewport] of [
      ['sun', portrait],
      ['dim', landscape],
    ] as const) {
      await page.setViewportSize(viewport);
      await inLight(page, light);
      await page.waitForTimeout(100);
      expect.soft(await violations(page), `${state}, ${light}`).toEqual([]);
      expect.soft(await beyond(page), `${state}, ${light}`).toEqual({ sideways: 0, down: 0 });
    }
    await inLight(page, 'paper');
    expect.soft(await contrastViolations(page), `${state}, indoors`).toEqual([]);
  }

  it.each([
    ['Pace, and a shop with one turn', walkPace],
    ['a shop full of records', walkDemo],
    ['Cell', walkCell],
    ['Study', walkStudy],
  ])('has no fault that axe can find: %s', async (_, walk) => {
    await walk(page, site.url, holds);
  });
});

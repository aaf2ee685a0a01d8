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

/** All rules lying and standing, in a light each; in the third those that light can break. */
async function faults(page: Page, state: string): Promise<string[]> {
  const found: string[] = [];
  for (const [light, viewport] of [
    ['sun', portrait],
    ['dim', landscape],
  ] as const) {
    await page.setViewportSize(viewport);
    await inLight(page, light);
    await page.waitForTimeout(100);
    found.push(...(await violations(page)).map((each) => `${state}, ${light}: ${each}`));
    const { sideways, down } = await beyond(page);
    if (sideways || down) found.push(`${state}, ${light}: the page moves, ${sideways}, ${down}`);
  }
  await inLight(page, 'paper');
  found.push(...(await contrastViolations(page)).map((each) => `${state}, indoors: ${each}`));
  return found;
}

describe('every screen, in every state that a tap leads to', () => {
  const site = new Site(inject('dist'));
  beforeAll(() => site.start());
  afterAll(() => site.discard());

  it.each([
    ['Cell, Pace, and a shop with one turn', [walkCell, walkPace]],
    ['Study, and a shop full of records', [walkStudy, walkDemo]],
  ])('has no fault that axe can find: %s', async (_, walks) => {
    const tablet = new Tablet();
    const found: string[] = [];
    try {
      const page = await tablet.start();
      for (const walk of walks) {
        await walk(page, site.url, async (state) => void found.push(...(await faults(page, state))));
      }
    } finally {
      await tablet.discard();
    }
    expect(found).toEqual([]);
  });
});

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, inject } from 'vitest';
import { Site } from './site';
import { landscape, Tablet } from './tablet';

/**
 * The built app on a site and a tablet of their own, opened at a place such as `#/demo/cell` before the journeys of a
 * suite begin, and gone after the last of them.
 *
 * @param opened gets the page: what a journey calls `page` is set there
 */
export function appOnTablet(place: string, opened: (page: Page) => void, viewport = landscape) {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  beforeAll(async () => {
    await site.start();
    const page = await tablet.start(viewport);
    opened(page);
    await page.goto(`${site.url}${place}`);
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });
  return { site, tablet };
}

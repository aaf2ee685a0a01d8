import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { walkCell, walkDemo, walkPace, walkStudy } from './support/every-state';
import { cut } from './support/language-faults';
import { lost } from './support/lost';
import { Site } from './support/site';
import { landscape, Tablet } from './support/tablet';

/** What a person sets in the settings of the browser: the size of text that pages begin from, in pixels. */
function setTextSize(tablet: Tablet, px: number): void {
  mkdirSync(path.join(tablet.profile, 'Default'), { recursive: true });
  const settings = { webkit: { webprefs: { default_font_size: px } } };
  writeFileSync(path.join(tablet.profile, 'Default/Preferences'), JSON.stringify(settings));
}

/** A page at twice its size has half the window. */
const zoomed = { width: 400, height: 640 };

describe('with text twice as large', () => {
  const site = new Site(inject('dist'));
  beforeAll(() => site.start());
  afterAll(() => site.discard());

  it.each([
    ['by the setting of the browser, lying', landscape, 32],
    ['by zoom, standing', zoomed, 16],
  ])('nothing is cut, covered or beside the page: %s', async (_, viewport, px) => {
    const tablet = new Tablet();
    setTextSize(tablet, px);
    const found: string[] = [];
    try {
      const page = await tablet.start(viewport);
      for (const walk of [walkStudy, walkCell, walkDemo, walkPace]) {
        await walk(page, site.url, async (state) => {
          for (const each of [...(await cut(page)), ...(await lost(page))]) found.push(`${state}: ${each}`);
        });
      }
      const root = await page.evaluate(() => getComputedStyle(document.documentElement).fontSize);
      expect(root).toBe(`${px * 1.125}px`);
    } finally {
      await tablet.discard();
    }
    expect(found).toEqual([]);
  });
});

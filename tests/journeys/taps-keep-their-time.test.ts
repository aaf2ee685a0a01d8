import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { beginFirstTurn, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { Site } from './support/site';
import { Tablet } from './support/tablet';

const TAPS = 20;
const STALL_MS = 300;
/** The page hears of a tap at least so much later than it was made, or nothing was proved. */
const LATE_MS = 100;

/** What the wall clock of the page shows when its monotonic one is at 0: the middle of many looks at both. */
function wallAtZero(page: Page): Promise<number> {
  return page.evaluate(() => {
    const looks = Array.from({ length: 201 }, () => Date.now() + 0.5 - performance.now());
    return looks.sort((a, b) => a - b)[100]!;
  });
}

describe('taps while the page is at work for 300 ms', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let page: Page;

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
    await page.goto(site.url);
    await beginFirstTurn(page, 'K7', 'M', '1:30');
    await saved(page);
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  it('are all recorded, at the time of the finger to 5 ms, on both clocks, however late they are heard', async () => {
    const input = await page.context().newCDPSession(page);
    const button = (await page.getByRole('button', { name: /^Part done/ }).boundingBox())!;
    const finger = { x: button.x + button.width / 2, y: button.y + button.height / 2 };
    await page.evaluate(() => {
      const heard = window as typeof window & { lags: number[] };
      heard.lags = [];
      addEventListener('pointerdown', () => heard.lags.push(performance.now()), true);
    });
    const touchedMs: number[] = [];
    const zeroMs = await wallAtZero(page);
    for (let tap = 0; tap < TAPS; tap += 1) {
      await page.evaluate((stallMs) => {
        setTimeout(() => {
          const untilMs = performance.now() + stallMs;
          while (performance.now() < untilMs);
        }, 0);
      }, STALL_MS);
      await page.waitForTimeout(40 + (tap % 5) * 20);
      // The system's own time of the touch, as a touch panel gives it.
      const atMs = Date.now();
      touchedMs.push(atMs);
      await input.send('Input.dispatchTouchEvent', {
        type: 'touchStart',
        touchPoints: [finger],
        timestamp: atMs / 1_000,
      });
      await input.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    }
    await saved(page);
    const taps = (await readOwnLog(page)).filter(({ fact }) => fact.kind === 'part-done');
    expect(taps).toHaveLength(TAPS);
    const heardMs = await page.evaluate(() => (window as typeof window & { lags: number[] }).lags);
    const late = taps.filter(({ stamp }, tap) => heardMs[tap]! - stamp.monoMs > LATE_MS);
    expect(late.length).toBeGreaterThan(TAPS / 2);
    for (const [tap, { stamp }] of taps.entries()) {
      // How far the page's wall clock lies from that of whoever sends the taps is the browser's affair, and stays.
      const wallMs = zeroMs + stamp.monoMs;
      expect(Math.abs(stamp.wallMs - wallMs), `tap ${tap}, by the wall clock`).toBeLessThanOrEqual(5);
      const first = taps[0]!.stamp;
      const shouldBeMs = touchedMs[tap]! - touchedMs[0]!;
      for (const sinceFirstMs of [stamp.monoMs - first.monoMs, stamp.wallMs - first.wallMs])
        expect(Math.abs(sinceFirstMs - shouldBeMs), `tap ${tap}, since the first`).toBeLessThanOrEqual(5);
    }
  });
});

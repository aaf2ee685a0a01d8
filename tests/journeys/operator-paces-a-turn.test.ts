import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { LogRecord } from '../../src/domain/records/log-record';
import { appOnTablet } from './support/app-on-tablet';
import { beginFirstTurn, partDone, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { tap, tapButton } from './support/tap';

/** A person's own tap, at this pace: above the time in which a second touch is a bounce. */
const BETWEEN_TAPS_MS = 1_600;
const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

const partsDone = (records: LogRecord[]) => records.filter(({ fact }) => fact.kind === 'part-done');

/** This part's time as the screen shows it, in whole seconds. */
async function shownSeconds(page: Page): Promise<number> {
  const text = await page.locator('.pace-clock').first().innerText();
  const [minutes, seconds] = text.split(':').map(Number);
  return minutes! * 60 + seconds!;
}

/** The same, and between which moments it was read: a busy machine takes its time over it. */
async function shownBetween(page: Page): Promise<{ seconds: number; fromMs: number; toMs: number }> {
  const fromMs = Date.now();
  return { seconds: await shownSeconds(page), fromMs, toMs: Date.now() };
}

/** Notes when the browser says that each touch began, wall clock in milliseconds. */
function listenForTouches(page: Page): Promise<void> {
  return page.evaluate(() => {
    const touches: number[] = [];
    Object.assign(globalThis, { touches });
    const note = ({ timeStamp }: Event) => touches.push(performance.timeOrigin + timeStamp);
    addEventListener('pointerdown', note, { capture: true });
  });
}

function touchesSince(page: Page): Promise<number[]> {
  return page.evaluate(() => (globalThis as unknown as { touches: number[] }).touches);
}

describe('an operator with a tablet that has never seen the app', () => {
  let page: Page;
  const { site, tablet } = appOnTablet('', (opened) => {
    page = opened;
  });

  it('paces 20 parts with 20 taps, each of them saved', async () => {
    await beginFirstTurn(page, 'K7', 'M', '0:02');
    await listenForTouches(page);
    for (let part = 1; part <= 20; part += 1) {
      await wait(BETWEEN_TAPS_MS);
      await partDone(page);
      await page.getByText(`${part}`, { exact: true }).first().waitFor();
    }
    await saved(page);
    const taps = partsDone(await readOwnLog(page));
    expect(taps).toHaveLength(20);
    // What is recorded is when the finger came down, however busy the machine was when the app heard of it.
    const touches = await touchesSince(page);
    expect(touches).toHaveLength(20);
    for (const [place, { stamp }] of taps.entries()) {
      expect(Math.abs(stamp.wallMs - touches[place]!)).toBeLessThan(50);
    }
    const between = taps.slice(1).map(({ stamp }, place) => stamp.monoMs - taps[place]!.stamp.monoMs);
    expect(Math.min(...between)).toBeGreaterThan(BETWEEN_TAPS_MS - 100);
  });

  it('goes on after a reload with the server stopped', async () => {
    await page.reload();
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await site.stop();
    const before = await shownSeconds(page);
    await page.reload();
    await page.getByRole('button', { name: /^Part done/ }).waitFor();
    expect(await shownSeconds(page)).toBeGreaterThanOrEqual(before);
    await partDone(page);
    await saved(page);
    expect(partsDone(await readOwnLog(page))).toHaveLength(21);
  });

  it('carries on after the browser was killed in the middle of a cycle, the server still gone', async () => {
    await wait(3_000);
    const before = await shownBetween(page);
    await tablet.kill();
    page = await tablet.start();
    await page.goto(site.url);
    await page.getByRole('button', { name: /^Part done/ }).waitFor();
    const after = await shownBetween(page);
    const shown = after.seconds - before.seconds;
    // Each is a whole second that was shown at some moment of its reading.
    expect(shown).toBeGreaterThan((after.fromMs - before.toMs) / 1_000 - 1.5);
    expect(shown).toBeLessThan((after.toMs - before.fromMs) / 1_000 + 1.5);
    await partDone(page);
    await saved(page);
    const records = await readOwnLog(page);
    expect(partsDone(records)).toHaveLength(22);
    expect(records.map(({ sequence }) => sequence)).toEqual(records.map((_, place) => place + 1));
    await site.start();
  });

  it('stops, says why afterwards, goes on, and takes the last tap back', async () => {
    await tapButton(page, 'Stop');
    await wait(1_100);
    await tapButton(page, /^Go on/);
    await wait(600);
    await tapButton(page, /say why$/);
    await tapButton(page, 'Waiting for material');
    await partDone(page);
    await tapButton(page, /^Undo/);
    await saved(page);
    const kinds = (await readOwnLog(page)).slice(-5).map(({ fact }) => fact.kind);
    expect(kinds).toEqual(['stopped', 'resumed', 'stoppage-explained', 'part-done', 'undone']);
    await partDone(page);
  });

  it('finds the way back to the running turn from any other screen', async () => {
    const pace = page.getByRole('link', { name: 'Pace', exact: false });
    await tap(page, page.getByRole('link', { name: 'Records', exact: true }));
    await pace.getByText('running').waitFor();
    await tap(page, pace);
    await page.getByRole('button', { name: /^Part done/ }).waitFor();
    expect(await page.getByText('running').isVisible()).toBe(false);
  });

  it('is asked about a second tap at the end of the turn, where nothing was decided about it', async () => {
    await wait(BETWEEN_TAPS_MS);
    await partDone(page);
    await partDone(page);
    await page.getByText('Right after the tap before: not counted so far').first().waitFor();
    await tapButton(page, /^End turn/);
    await page.getByText('24 parts done.').waitFor();
    await tap(page, page.getByRole('region', { name: 'Still open' }).getByText('A part', { exact: true }));
    await page.getByText('25 parts done.').waitFor();
    await tapButton(page, 'End the turn');
  });

  it('sees the own record first, 25 parts and where the time went, and finds it again', async () => {
    await page.getByRole('heading', { name: 'Your own record' }).waitFor();
    const sheet = () => page.getByRole('table').first().innerText();
    expect(await sheet()).toMatch(/M\s+25/);
    await saved(page);
    await tapButton(page, 'Start another turn');
    await tapButton(page, /^See the last record: K7/);
    expect(await sheet()).toMatch(/M\s+25/);
  });
});

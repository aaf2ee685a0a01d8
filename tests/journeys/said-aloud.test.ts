import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { beginFirstTurn, partDone, saved } from './support/pace-steps';
import { Site } from './support/site';
import { Tablet } from './support/tablet';
import { tap, tapButton } from './support/tap';

/** Listens to what a screen reader would be told unasked, from now on. */
function listen(page: Page): Promise<void> {
  return page.evaluate(() => {
    const told: string[] = [];
    Object.assign(window, { told });
    new MutationObserver((changes) => {
      for (const { target } of changes) {
        const from = target instanceof Element ? target : target.parentElement;
        const live = from?.closest(
          '[role="status"], [role="alert"], [role="log"], output, [aria-live]:not([aria-live="off"])',
        );
        if (live?.textContent) told.push(live.textContent.trim());
      }
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
}

/** What was said since it was last asked, each once. */
function told(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const { told: all } = window as typeof window & { told: string[] };
    return [...new Set(all.splice(0))];
  });
}

/** Waits until this text has changed ten times. */
async function tenTicks(page: Page, selector: string): Promise<void> {
  await page.evaluate(
    (where) =>
      new Promise<void>((resolve) => {
        let before = '';
        let left = 10;
        const timer = setInterval(() => {
          const now = document.querySelector(where)!.textContent;
          if (now !== before) left -= 1;
          before = now;
          if (left >= 0) return;
          clearInterval(timer);
          resolve();
        }, 50);
      }),
    selector,
  );
}

/** Role and name of everything in Chromium's tree for assistive tools that has a name. */
async function spokenTree(page: Page): Promise<string[]> {
  const session = await page.context().newCDPSession(page);
  const { nodes } = await session.send('Accessibility.getFullAXTree');
  await session.detach();
  return nodes
    .filter(({ ignored, name }) => !ignored && name?.value)
    .map(({ role, name }) => `${role?.value}: ${name?.value}`);
}

describe('what is said aloud', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let page: Page;

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
    await page.goto(site.url);
    await beginFirstTurn(page, 'K7', 'M', '0:05');
    await saved(page);
    await page.waitForTimeout(500);
    await listen(page);
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  it('is nothing while clocks tick, past the target too, in a part and in a stoppage', async () => {
    await tenTicks(page, '.pace-clock');
    expect(await told(page)).toEqual([]);
    await tapButton(page, 'Stop');
    await page.waitForTimeout(500);
    await told(page);
    await tenTicks(page, '.pace-clock');
    expect(await told(page)).toEqual([]);
    await tapButton(page, /^Go on/);
    await page.waitForTimeout(500);
    await told(page);
  });

  it('is every act on Pace, once and in few words', async () => {
    await page.waitForTimeout(1_600);
    await partDone(page);
    await page.waitForTimeout(300);
    expect((await told(page)).join()).toMatch(/^Part 1 done/);
    await page.waitForTimeout(1_600);
    await tapButton(page, 'Stop');
    await page.waitForTimeout(300);
    expect(await told(page)).toEqual(['Stopped']);
    await page.waitForTimeout(1_600);
    await tapButton(page, /^Go on/);
    await page.waitForTimeout(300);
    expect(await told(page)).toEqual(['Going on']);
    await tapButton(page, /^Undo/);
    await page.waitForTimeout(300);
    expect((await told(page)).join()).toMatch(/^Taken back/);
  });

  it('is that something is not saved, as soon as it is so', async () => {
    await page.evaluate(() => {
      IDBObjectStore.prototype.add = () => {
        throw new DOMException('no room', 'QuotaExceededError');
      };
    });
    await page.waitForTimeout(1_600);
    await tapButton(page, /^Go on/);
    await page.getByText(/Not saved: 1 record/).waitFor();
    expect((await told(page)).join()).toMatch(/Not saved: 1 record/);
  });

  it('has a name for each thing on Pace: the clock is a timer, buttons say what they do', async () => {
    const tree = await spokenTree(page);
    for (const each of [
      /^timer: This part/,
      /^button: Part done/,
      /^button: Stop$/,
      /^button: Undo/,
      /^button: Previous part/,
      /^button: Change part$/,
      /^button: End turn or hand over$/,
      /^heading: K7 · M/,
      /^navigation: /,
      /^link: Pace$/,
    ]) {
      expect(tree.filter((said) => each.test(said))).toHaveLength(1);
    }
    expect(tree.filter((said) => /^(button|link|textbox|image): *$/.test(said))).toEqual([]);
  });

  it('is nothing while the watch of a study runs, and the element that comes when one ends', async () => {
    await page.goto('about:blank');
    await page.goto(`${site.url}#/demo/study/new`);
    await page.getByRole('button', { name: /^M WD-1310/ }).click();
    await page.getByLabel('Operator code').fill('K7');
    await page.getByLabel('Observer').fill('E1');
    await page.getByRole('button', { name: 'one after the other' }).click();
    await page.getByRole('button', { name: 'improve the method' }).click();
    await page.getByLabel('The person knows that this is recorded, and why').check();
    await page.getByRole('button', { name: 'To the watch' }).click();
    await tap(page, page.locator('.study-surface'));
    await page.waitForTimeout(700);
    await listen(page);
    await tenTicks(page, '.study-watch dd');
    expect(await told(page)).toEqual([]);
    await tap(page, page.locator('.study-surface'));
    await page.waitForTimeout(300);
    expect((await told(page)).join()).toContain('E1 unload to bench');
  });
});

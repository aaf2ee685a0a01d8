import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { beginFirstTurn, partDone } from './support/pace-steps';
import { Site } from './support/site';
import { landscape, portrait, Tablet } from './support/tablet';
import { tap, tapAt, tapButton } from './support/tap';

/** 15 mm and 25 mm on a ten-inch tablet, of which 149 pixels of the page are an inch. */
const SECOND_PX = 88;
const MAIN_PX = 147;
const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** Buttons of Pace that are too small for a glove, lie on another one, or leave the part of the screen they belong to. */
function faults(page: Page, main: number): Promise<string[]> {
  return page.evaluate(
    ([second, mainPx]) => {
      const found: string[] = [];
      const buttons = [...document.querySelectorAll('.pace-upper button, .pace-controls button')]
        .map((each) => ({ each, box: each.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0);
      for (const { each, box } of buttons) {
        const name = each.textContent!.slice(0, 30);
        const least = each.matches('.pace-main, .pace-stop') ? mainPx! : second!;
        const side = Math.min(box.width, box.height);
        if (side < least - 0.5) found.push(`${name}: ${Math.round(side)} px`);
        for (const { each: other, box: its } of buttons) {
          const isOver =
            box.left < its.right - 1 &&
            its.left < box.right - 1 &&
            box.top < its.bottom - 1 &&
            its.top < box.bottom - 1;
          // What scrolls in a panel may lie under its edge.
          if (other !== each && isOver && !each.closest('.pace-panel') && !other.closest('.pace-panel'))
            found.push(`${name} on ${other.textContent!.slice(0, 30)}`);
        }
      }
      return found;
    },
    [SECOND_PX, main],
  );
}

/** Nothing lies over it, and it is not beyond an edge. */
function isUnderTheFinger(button: Locator): Promise<boolean> {
  return button.evaluate((each) => {
    const { x, y, width, height } = each.getBoundingClientRect();
    return each.contains(document.elementFromPoint(x + width / 2, y + height / 2));
  });
}

async function inBoth(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const viewport of [landscape, portrait]) {
    await page.setViewportSize(viewport);
    await wait(150);
    found.push(...(await faults(page, MAIN_PX)));
  }
  await page.setViewportSize(landscape);
  return found;
}

describe.each(['own', 'demo'])('an operator in gloves, in the %s shop', (shop) => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let page: Page;

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
    await page.goto(`${site.url}${shop === 'demo' ? '#/demo/pace' : ''}`);
    if (shop === 'own') await beginFirstTurn(page, 'K7', 'M', '0:02');
    else {
      for (const place of [0, 1]) {
        await tap(page, page.locator('.pace-setup-lists section').nth(place).locator('.pace-choice').first());
      }
      await tapButton(page, /^Start/);
      await page.getByRole('button', { name: /^Part done/ }).waitFor();
    }
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  it('meets every button with a glove, and none lies on another, whatever stands beside the figures', async () => {
    await wait(1_700);
    await partDone(page);
    await page.locator('.pace-outlook').waitFor();
    expect(await inBoth(page)).toEqual([]);
    await tapButton(page, 'Stop');
    await page.getByRole('button', { name: 'Not stated' }).waitFor();
    expect(await inBoth(page)).toEqual([]);
    await tapButton(page, /^Go on/);
    await page.getByRole('button', { name: /say why$/ }).waitFor();
    // After a stop the forecast is not hidden.
    expect(await page.locator('.pace-outlook').isVisible()).toBe(true);
    expect(await inBoth(page)).toEqual([]);
    await wait(1_700);
    await partDone(page);
    await partDone(page);
    await page.getByText('Right after the tap before: not counted so far').first().waitFor();
    expect(await inBoth(page)).toEqual([]);
  });

  it('reaches whoever goes on in two taps while questions are open, and is told that there is more below', async () => {
    for (const viewport of [landscape, portrait]) {
      await page.setViewportSize(viewport);
      await tapButton(page, /^End turn/);
      const other = page.getByRole('button', { name: 'Another code' });
      await other.waitFor();
      expect(await isUnderTheFinger(other)).toBe(true);
      if (viewport === landscape) await page.getByText('▼ More below').waitFor();
      await tapButton(page, 'Keep working');
    }
    await page.setViewportSize(landscape);
  });

  it('sees that a second question is another one', async () => {
    await wait(1_700);
    await partDone(page);
    await partDone(page);
    await page.getByText(/^\d\d:\d\d · \S+$/).waitFor();
    await tapButton(page, /No part$/);
    await page.getByText('Answered: No part. 1 more asked').first().waitFor();
    // The finger is still there, and nobody has read the other question.
    await tapButton(page, /No part$/);
    await page.getByText('That is the next question: read it first').first().waitFor();
    await wait(800);
    await tapButton(page, /No part$/);
    await page.getByText('Answered: No part', { exact: true }).first().waitFor();
  });

  it('has Cancel of another code in view, and every button of a panel for a glove', async () => {
    await tapButton(page, /^End turn/);
    await tapButton(page, 'Another code');
    const cancel = (await page.getByRole('button', { name: 'Cancel' }).boundingBox())!;
    expect(cancel.y + cancel.height).toBeLessThan(400);
    expect(await inBoth(page)).toEqual([]);
    await tapButton(page, 'Keep working');
    for (const name of ['Change part', /^Previous part/]) {
      await tapButton(page, name);
      await page.getByRole('button', { name: 'Back' }).waitFor();
      expect(await inBoth(page)).toEqual([]);
      await tapButton(page, 'Back');
    }
  });

  it('has room for what was scrap and what waits for rework, and for the parts that wait', async () => {
    const say = async (outcome: string) => {
      await wait(1_700);
      await partDone(page);
      await tapButton(page, /^Previous part/);
      await tapButton(page, outcome);
    };
    await say('Rework later');
    await say('Scrap');
    await page.getByText('1 scrap · 1 to rework').waitFor();
    expect(await inBoth(page)).toEqual([]);
    await tapButton(page, /^Previous part/);
    expect(await inBoth(page)).toEqual([]);
    await tapButton(page, /^Rework \S+ of/);
    await page.getByText('Rework for').waitFor();
    expect(await inBoth(page)).toEqual([]);
    await tapButton(page, /^Rework done/);
    await page
      .getByText(/^Rework finished/)
      .first()
      .waitFor();
    expect(await inBoth(page)).toEqual([]);
  });

  it('says from the box of the outlook what is wanted and until when, and sees both there', async () => {
    await tap(page, page.locator('.pace-outlook'));
    await page.getByLabel('Good parts').fill('1500');
    await page.getByLabel('Shift ends at').fill('23:59');
    expect(await inBoth(page)).toEqual([]);
    await tapButton(page, 'Set');
    await page
      .locator('.pace-outlook')
      .getByText(/of 1500 left/)
      .waitFor();
    await tap(page, page.locator('.pace-outlook'));
    expect(await page.getByLabel('Shift ends at').inputValue()).toBe('23:59');
    await tapButton(page, 'Back');
  });

  it('lets nothing happen when the finger that ends the turn comes off somewhere else', async () => {
    await tapButton(page, /^End turn/);
    const box = (await page.getByRole('button', { name: 'End the turn' }).boundingBox())!;
    const session = await page.context().newCDPSession(page);
    const at = [{ x: box.x + 40, y: box.y + 40 }];
    await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at });
    expect(await page.getByRole('heading', { name: 'Your own record' }).isVisible()).toBe(false);
    await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await page.getByRole('heading', { name: 'Your own record' }).waitFor();
    await tapAt(page, 5, 5);
  });
});

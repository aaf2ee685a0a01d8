import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { appOnTablet } from './support/app-on-tablet';
import { beginFirstTurn, partDone, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { tapButton } from './support/tap';

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/**
 * What a keyboard-wedge scanner does: keys one after the other, and then what ends them. The keys have the moments of the
 * scanner, however busy this machine is; the end is a real press, which could press what has the focus.
 */
async function scan(page: Page, text: string, gapMs: number, end: 'Enter' | 'Tab'): Promise<void> {
  await page.evaluate(
    async ([typed, gap]) => {
      const fromMs = performance.now();
      const presses = [...typed].map(async (key, place) => {
        await new Promise((resolve) => setTimeout(resolve, place * gap));
        const press = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true });
        Object.defineProperty(press, 'timeStamp', { value: fromMs + place * gap });
        (document.activeElement ?? document.body).dispatchEvent(press);
      });
      await Promise.all(presses);
    },
    [text, gapMs] as const,
  );
  await page.keyboard.press(end);
}

async function partsDone(page: Page): Promise<number> {
  await saved(page);
  return (await readOwnLog(page)).filter(({ fact }) => fact.kind === 'part-done').length;
}

describe('an operator with a scanner and a keyboard at the station', () => {
  let page: Page;
  appOnTablet('', (opened) => {
    page = opened;
  });

  beforeAll(async () => {
    await beginFirstTurn(page, 'K7', 'M', '0:02');
    await wait(1_700);
    await partDone(page);
  });

  it('is told in words of a code that nobody knows, however the scanner types, and no part is counted', async () => {
    for (const [place, gapMs] of [5, 25, 50].entries()) {
      for (const end of ['Enter', 'Tab'] as const) {
        await scan(page, `PLATE-${place}${end}`, gapMs, end);
        await page.getByText(`Scanned “PLATE-${place}${end}”: no part has this code`).first().waitFor();
        await wait(900);
        await page.getByText(`Scanned “PLATE-${place}${end}”: no part has this code`).first().waitFor();
      }
    }
    expect(await partsDone(page)).toBe(1);
  });

  it('types another code at the end of a turn, and no key of it is a tap', async () => {
    await tapButton(page, /^End turn/);
    await tapButton(page, 'Another code');
    await page.keyboard.type('R2');
    expect(await page.getByLabel('Code', { exact: true }).inputValue()).toBe('R2');
    await page.keyboard.press('Enter');
    await page.getByText('R2 · M').waitFor();
    expect(await partsDone(page)).toBe(1);
  });

  it('types how many parts are wanted with the focus on the surface, and taps nothing', async () => {
    await page.locator('.pace-outlook').waitFor();
    await tapButton(page, /^Parts wanted/);
    await page.keyboard.press('Enter');
    await page.keyboard.type('12');
    expect(await page.getByLabel('Good parts').inputValue()).toBe('12');
    await page.keyboard.press('Enter');
    await page.locator('.pace-outlook').waitFor();
    expect(await partsDone(page)).toBe(1);
    await page.keyboard.press('b');
    await wait(400);
    expect(await partsDone(page)).toBe(2);
  });
});

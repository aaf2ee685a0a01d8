import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOnTablet } from './support/app-on-tablet';
import { saved } from './support/pace-steps';
import { portrait } from './support/tablet';
import { tap, tapButton } from './support/tap';

/**
 * Heizer & Render, Operations Management, example 10.2: letters, minutes; two readings are foreign; 15 % of the day.
 * Printed: averages 9.5, 2.2, 1.5; normal times 11.4, 2.31, 1.65; standard time 18.07 min.
 */
const letters = [
  { name: 'Compose', rating: '120', minutes: ['8', '10', '9', '21', '11'], foreign: 3 },
  { name: 'Address', rating: '105', minutes: ['2', '3', '2', '1', '3'], foreign: -1 },
  { name: 'Stuff', rating: '110', minutes: ['2', '1', '5', '2', '1'], foreign: 2 },
];
const CYCLES = 5;

describe('an engineer with a paper study', () => {
  let page: Page;
  const { site } = appOnTablet(
    '#/study',
    (opened) => {
      page = opened;
    },
    portrait,
  );
  const reach = async (name: string | RegExp) => {
    const button = page.getByRole('button', { name, exact: typeof name === 'string' }).first();
    await button.scrollIntoViewIfNeeded();
    await tap(page, button);
  };
  const type = async (digits: string) => {
    for (const digit of digits) await reach(digit);
  };

  it('writes the method, and types the sheet cycle by cycle on the pad, over a reload', async () => {
    await tapButton(page, 'New study');
    await page.getByLabel('Code of the part').fill('LETTER');
    await tapButton(page, 'Add this part');
    for (const { name } of letters) {
      await reach('Add an element');
      await page.getByLabel('Element', { exact: true }).fill(name);
      await reach('Done');
    }
    await reach('Keep as revision 1');
    await page.getByText('Revision 1', { exact: true }).waitFor();
    await page.goto(`${site.url}#/study/paper`);
    await reach('LETTER');
    await page.getByLabel('Name of the study').fill('Letters');
    await page.getByLabel('Day', { exact: true }).fill('2026-03-02');
    await page.getByLabel('Operator code').fill('K7');
    await reach('Begin typing');
    for (let cycle = 1; cycle <= CYCLES; cycle += 1) {
      if (cycle === 3) await page.reload();
      for (const { name, rating, minutes, foreign } of letters) {
        await page.getByRole('status').filter({ hasText: name }).waitFor();
        await type(minutes[cycle - 1]!);
        if (cycle === 1) {
          await reach(/^Rating/);
          await type(rating);
        }
        if (foreign === cycle - 1) {
          await page.getByLabel('Left out because').selectOption({ label: 'foreign element inside' });
        }
        await reach(/^Next/);
      }
    }
    await reach('Keep this study');
    await saved(page);
  });

  it('reads the printed standard time once the allowance is given', async () => {
    await reach('Change');
    await page.getByLabel('Allowance, %', { exact: true }).fill('15');
    await reach(/^of the shift/);
    await reach('Keep these');
    await page.locator('.study-answer', { hasText: '18.071 min' }).waitFor();
    for (const printed of ['NT, Compose: 11.400', 'NT, Address: 2.310', 'NT, Stuff: 1.650']) {
      expect(await page.getByRole('button', { name: printed }).count()).toBe(1);
    }
  });
});

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOnTablet } from './support/app-on-tablet';
import { beginFirstTurn, partDone, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { tap, tapButton } from './support/tap';

/** Above the time in which a second touch is a bounce. */
const BETWEEN_TAPS_MS = 1_700;
const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

describe('two people at one tablet', () => {
  let page: Page;
  appOnTablet('', (opened) => {
    page = opened;
  });

  const kinds = async () => (await readOwnLog(page)).map(({ fact }) => fact.kind);
  const parts = async (count: number) => {
    for (let part = 0; part < count; part += 1) {
      await wait(BETWEEN_TAPS_MS);
      await partDone(page);
    }
  };
  const toScreen = (name: string) => tap(page, page.getByRole('link', { name, exact: true }));

  it('hand a part over in two taps', async () => {
    await beginFirstTurn(page, 'K7', 'M', '0:02');
    await toScreen('Shop');
    await page.getByLabel('A new code').fill('M2');
    await page.getByRole('button', { name: 'Add', exact: true }).click();
    await toScreen('Pace');
    await parts(1);
    await tapButton(page, /^End turn/);
    await tapButton(page, 'M2');
    await page.getByRole('heading', { name: /^M2 · M/ }).waitFor();
    await parts(2);
    await saved(page);
    expect((await kinds()).filter((kind) => kind === 'person-changed')).toHaveLength(1);
  });

  it('are asked about nothing after a quick reload, and the part goes on', async () => {
    await wait(11_000);
    await page.reload();
    await page.getByRole('button', { name: /^Part done/ }).waitFor();
    await parts(1);
    await saved(page);
    expect(await kinds()).toContain('page-opened');
    expect(await page.getByText('Was it work?').count()).toBe(0);
  });

  it('see their own parts at the end, without the one they shared', async () => {
    await tapButton(page, /^End turn/);
    await tapButton(page, 'End the turn');
    await page.getByText('One part was shared by two').waitFor();
    const sheet = page.locator('.pace-own table').first();
    // M2 made two alone; K7 one.
    expect(await sheet.locator('tbody td').nth(1).innerText()).toContain('2');
    await page.getByRole('group', { name: 'Whose record?' }).getByRole('button', { name: 'K7' }).click();
    expect(await sheet.locator('tbody td').nth(1).innerText()).toContain('1');
    // And K7 is offered K7's own days alone.
    expect(await page.getByRole('button', { name: /^The last 90 days of/ }).allInnerTexts()).toEqual([
      'The last 90 days of K7 as a file',
    ]);
  });

  it('can put right what nobody asked about, with a reason, and Review shows it', async () => {
    const right = page.locator('.settle-right');
    await right.getByRole('button', { name: 'Parts', exact: true }).click();
    await right.getByRole('button', { name: 'Leave out of averages' }).click();
    await right.getByRole('textbox', { name: 'Reason' }).fill('drill broke');
    await right.getByRole('button', { name: 'Leave the part out of averages' }).click();
    await right.getByText(/^Put right: /).waitFor();
    await saved(page);
    await toScreen('Review');
    await page.getByText(/1 part shared by two people/).waitFor();
    await page.getByText('drill broke').first().waitFor({ state: 'attached' });
  });

  it('have breaks in the turn that begins after the shop has said when it works', async () => {
    await toScreen('Shop');
    await page.getByRole('button', { name: 'Add a shift' }).click();
    const form = page.locator('form.panel');
    await form.getByLabel('Name').fill('all day');
    await form.getByLabel('From', { exact: true }).fill('00:00');
    await form.getByLabel('To', { exact: true }).fill('23:59');
    for (const day of ['Sat', 'Sun']) await form.getByRole('button', { name: day }).click();
    await form.getByRole('button', { name: 'Add a break' }).click();
    await form.getByLabel('Break 1, from').fill('00:00');
    await form.getByLabel('Break 1, to').fill('23:58');
    await form.getByRole('button', { name: 'Save the shift' }).click();
    await page.getByText('The calendar is saved.').waitFor();
    await toScreen('Pace');
    await tapButton(page, 'Start another turn');
    await tapButton(page, /^K7/);
    await page.getByRole('group', { name: 'Which part?' }).getByRole('button').first().click();
    await tapButton(page, /^Start/);
    await expect.poll(kinds).toContain('shift-planned');
  });
});

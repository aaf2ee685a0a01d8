import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { appOnTablet } from './support/app-on-tablet';
import { beginFirstTurn, partDone, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { tap, tapButton } from './support/tap';

const BETWEEN_TAPS_MS = 1_700;
const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

async function makePart(page: Page): Promise<void> {
  await wait(BETWEEN_TAPS_MS);
  await partDone(page);
}

describe('an operator with a part to be reworked', () => {
  let page: Page;
  appOnTablet('', (opened) => {
    page = opened;
  });

  beforeAll(async () => {
    await beginFirstTurn(page, 'K7', 'M', '0:02');
    await makePart(page);
  });

  it('marks it, goes on, and finds it again when there is time for it', async () => {
    await tapButton(page, /^Previous part/);
    await tapButton(page, 'Rework later');
    await page.getByText('To rework: it waits under “Previous part”').first().waitFor();
    await makePart(page);
    await page.locator('.pace-tally-apart').getByText('1 to rework').waitFor();
    await page
      .getByRole('button', { name: /^Previous part/ })
      .getByText('1 to rework')
      .waitFor();
    await tapButton(page, /^End turn/);
    await page.getByText('1 part waits to be reworked: in any turn here, under “Previous part”.').waitFor();
    await tapButton(page, 'Keep working');
    await tapButton(page, /^Previous part/);
    await tapButton(page, /^Rework M of/);
    await page.getByText(/^Rework of M, done at/).waitFor();
  });

  it('takes the beginning back, and the part waits again', async () => {
    await page.getByRole('button', { name: /^Undo/ }).getByText('start of rework').waitFor();
    await tapButton(page, /^Undo/);
    await page.locator('.pace-tally-apart').getByText('1 to rework').waitFor();
  });

  it('is told when it is finished; the time is that part’s, and nothing waits any more', async () => {
    await tapButton(page, /^Previous part/);
    await tapButton(page, /^Rework M of/);
    await wait(1_100);
    await tapButton(page, /^Rework done/);
    await page
      .getByText(/^Rework finished, 0:0/)
      .first()
      .waitFor();
    await page.getByText('1 reworked', { exact: true }).waitFor();
    await saved(page);
    const records = await readOwnLog(page);
    const first = records.find(({ fact }) => fact.kind === 'part-done')!;
    const why = records.map(({ fact }) => fact).findLast(({ kind }) => kind === 'stoppage-explained');
    expect(why).toMatchObject({ category: 'rework', ofPart: `${first.device}:${first.sequence}` });
  });

  it('puts a part out of the average at once by saying that a stop was in it, and in again', async () => {
    await makePart(page);
    await page.getByText('(3)').waitFor();
    await tapButton(page, /^Previous part/);
    await tapButton(page, 'A stop was in it');
    await page.getByText('(2 of 3)').waitFor();
    await tapButton(page, /^Undo/);
    await page.getByText('(3)').waitFor();
    await tapButton(page, /^Previous part/);
    await tapButton(page, 'A stop was in it');
  });

  it('is asked why work stood still until that is said, or that nothing is; the rest is asked at the end', async () => {
    const stop = async () => {
      await tapButton(page, 'Stop');
      await wait(1_100);
      await tapButton(page, /^Go on/);
    };
    const asked = page.getByRole('button', { name: /say why$/ });
    await stop();
    await makePart(page);
    await makePart(page);
    await makePart(page);
    await asked.waitFor();
    await stop();
    await tapButton(page, /say why$/);
    await tapButton(page, 'Not stated');
    await asked.waitFor({ state: 'detached' });
    await tapButton(page, /^End turn/);
    const unsaid = page.locator('.pace-end-question').getByRole('button', { name: 'Say why' });
    await expect.poll(() => unsaid.count()).toBe(2);
    await tap(page, unsaid.first());
    await tap(page, page.getByRole('button', { name: 'Machine or tool' }));
    await expect.poll(() => unsaid.count()).toBe(1);
    await tapButton(page, 'Keep working');
  });

  it('is told that scrap earns no target, and reads it all in the own record', async () => {
    await makePart(page);
    await tapButton(page, /^Previous part/);
    await tapButton(page, 'Scrap');
    await page.getByText('Scrap: earns no target').first().waitFor();
    await page.getByText('1 scrap · 1 reworked', { exact: true }).waitFor();
    await tapButton(page, /^End turn/);
    await tapButton(page, 'End the turn');
    await page.getByText('Marked for rework: 1. Reworked, as tapped: 1. Still waiting: 0.').waitFor();
    await page.getByText('Left out of them: 1 with a stop in it.').waitFor();
  });

  it('marks one by mistake, and takes back the mark and not the part', async () => {
    await tapButton(page, 'Start another turn');
    await tapButton(page, /^Start/);
    await makePart(page);
    await tapButton(page, /^Previous part/);
    await tapButton(page, 'Scrap');
    await page.locator('.pace-tally-apart').getByText('1 scrap').waitFor();
    await tapButton(page, /^Undo/);
    await page.getByText('Taken back: Scrap').first().waitFor();
    expect(await page.locator('.pace-tally-figure').first().innerText()).toBe('1');
    await page.locator('.pace-tally-apart').waitFor({ state: 'detached' });
  });

  it('is offered in the next turn what waited at the end of the one before, whoever made it', async () => {
    await tapButton(page, /^Previous part/);
    await tapButton(page, 'Rework later');
    await tapButton(page, /^End turn/);
    await tapButton(page, 'End the turn');
    await tapButton(page, 'Start another turn');
    await page.getByText(/^1 part waits to be reworked/).waitFor();
    await tapButton(page, 'Another code');
    await page.getByLabel('Code', { exact: true }).fill('MO');
    await tapButton(page, 'Add code');
    await tapButton(page, /^Start/);
    await page
      .getByRole('button', { name: /^Previous part/ })
      .getByText('1 to rework')
      .waitFor();
    await tapButton(page, /^Previous part/);
    await tapButton(page, /^Rework M of .* · K7/);
    await page.getByText(/^Rework of M, done at .* · K7/).waitFor();
    await tapButton(page, /^Rework done/);
    const previous = page.getByRole('button', { name: /^Previous part/ });
    await previous.getByText('1 to rework').waitFor({ state: 'detached' });
    expect(await previous.isDisabled()).toBe(true);
  });
});

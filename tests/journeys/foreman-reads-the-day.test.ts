import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { downloadedText } from './support/download';
import { Site } from './support/site';
import { Tablet } from './support/tablet';
import { tap, tapButton } from './support/tap';

describe('a foreman with the demo shop', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let page: Page;
  const foreign: string[] = [];

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
    page.on('request', (request) => {
      if (!/^(blob|data):/.test(request.url()) && !request.url().startsWith(site.url))
        foreign.push(request.url());
    });
    await page.goto(site.url);
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  it('opens it with one tap, and every screen says that it is a demo', async () => {
    await tapButton(page, 'Open the demo shop');
    for (const screen of ['Pace', 'Study', 'Review', 'Shop', 'Records']) {
      await tap(page, page.getByRole('link', { name: screen, exact: true }));
      await page.getByText('Demo shop: invented records, kept apart from yours').waitFor();
    }
  });

  it('reads the newest day: 282 good parts, each kind beside its target', async () => {
    await tap(page, page.getByRole('link', { name: 'Review', exact: true }));
    // Day 20 of the invented shop: its description says 282 good.
    await page.getByText(/282 good/).waitFor();
    const main = await page.getByRole('main').innerText();
    expect(main).toContain('Fri 27 March 2026');
    for (const part of ['L', 'M', 'S']) expect(main).toContain(`${part}\n`);
    expect(main).not.toMatch(/\b(K7|M2|R4)\b/);
    // Said in words, and the same in the sheet: 282 good are 279 the first time and 3 after rework.
    await page
      .getByRole('heading', { name: /The parts ran 9 % faster than target, with 28 min lost/ })
      .waitFor();
    expect(main).toContain('282 good (279 the first time, 3 after rework), 1 scrapped');
    const sums = page.getByRole('row', { name: /^All parts/ });
    expect((await sums.getByRole('cell').allInnerTexts()).slice(-3)).toEqual(['279', '3', '1']);
  });

  it('sees in the weeks of M where the method changed', async () => {
    await page.getByText('method revision 1', { exact: true }).waitFor();
  });

  it('goes back to the hard Tuesday of the same week: 230 good parts', async () => {
    for (let back = 0; back < 3; back += 1) await tapButton(page, /Earlier day/);
    await page.getByText(/230 good/).waitFor();
    await page.getByText(/A harder mix than usual/).waitFor();
    // The day stays chosen over a look at another screen.
    await tap(page, page.getByRole('link', { name: 'Shop', exact: true }));
    await tap(page, page.getByRole('link', { name: 'Review', exact: true }));
    await page.getByText(/230 good/).waitFor();
  });

  it('finds a reason and a part half typed as they were, after a look at another screen', async () => {
    const look = async () => {
      await tap(page, page.getByRole('link', { name: 'Review', exact: true }));
      await page.getByText(/230 good/).waitFor();
      await tap(page, page.getByRole('link', { name: 'Shop', exact: true }));
    };
    await tap(page, page.getByRole('link', { name: 'Shop', exact: true }));
    await page.getByLabel('Words of reason 1').fill('No doors in the sta');
    await look();
    expect(await page.getByLabel('Words of reason 1').inputValue()).toBe('No doors in the sta');
    await page.getByText('Not saved yet.').waitFor();
    // Two buttons of one name would tell nobody apart what was lost to which.
    await page.getByLabel('Words of reason 1').fill('machine OR tool');
    await page.getByRole('button', { name: 'Save the reasons' }).scrollIntoViewIfNeeded();
    await tapButton(page, 'Save the reasons');
    await page
      .getByRole('alert')
      .getByText('Two reasons are called Machine or tool. Nothing was changed.')
      .waitFor();
    await page.getByRole('heading', { name: 'Parts', exact: true }).scrollIntoViewIfNeeded();
    await tapButton(page, 'Change part M');
    await page.getByLabel('Target for one part').fill('4');
    await page.getByText('= 4:00').waitFor();
    await look();
    expect(await page.getByLabel('Target for one part').inputValue()).toBe('4');
    await tapButton(page, 'Cancel');
    await look();
    await page.getByRole('heading', { name: 'Parts', exact: true }).waitFor();
    await tap(page, page.getByRole('link', { name: 'Review', exact: true }));
  });

  it('saves the day as a table with a header row and no name of a person in it', async () => {
    const table = await downloadedText(
      page,
      page.getByRole('button', { name: 'Save the table of this day' }),
    );
    const lines = table.replace('\uFEFF', '').trim().split('\r\n');
    expect(lines[0]).toContain('part');
    expect(lines.length).toBeGreaterThan(3);
    expect(table).not.toMatch(/\b(K7|M2|R4)\b/);
  });

  it('leaves the demo for a shop that is still empty', async () => {
    await tapButton(page, 'Leave the demo');
    await page.getByRole('heading', { name: 'Who is at the station?' }).waitFor();
    expect(await page.getByText('Demo shop: invented records').count()).toBe(0);
  });

  it('sent no request to anywhere else', () => {
    expect(foreign).toEqual([]);
  });
});

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { violations } from './support/axe';
import { downloadedText } from './support/download';
import { cut } from './support/language-faults';
import { beginFirstTurn, partDone, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { Site } from './support/site';
import { landscape, portrait, Tablet } from './support/tablet';
import { tap, tapButton } from './support/tap';

/** What is found about each thing, by its name: the judgement and the words. */
async function found(page: Page): Promise<Map<string, { judged: string; said: string }>> {
  await page.getByText(/wants? seeing to/).waitFor();
  const rows = await page.getByRole('main').getByRole('row').all();
  const lines = await Promise.all(
    rows.map(async (row) => {
      const [judged, said] = await row.getByRole('cell').allInnerTexts();
      return [await row.getByRole('rowheader').innerText(), { judged: judged!, said: said! }] as const;
    }),
  );
  return new Map(lines);
}

describe('a tablet that is asked about itself', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let page: Page;

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
    await page.goto(site.url);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.reload();
    await beginFirstTurn(page, 'ZEBRA7', 'QUAGGA', '1:30');
    await partDone(page);
    await saved(page);
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  it('says from its own sheet, while a turn runs, what was found and whether that is fine', async () => {
    const before = await readOwnLog(page);
    await tapButton(page, 'Tablet');
    const check = page.getByRole('button', { name: 'Check this tablet' });
    await check.scrollIntoViewIfNeeded();
    await tap(page, check);
    const lines = await found(page);
    expect(lines.get('Clock')!.said).toMatch(/^tells time in steps of \d+\.\d+ ms/);
    expect(lines.get('Time to save')!.said).toMatch(
      /^half of 40 writes took \d+\.\d ms at most, the slowest/,
    );
    expect(lines.get('Copies on this tablet')).toEqual({
      judged: 'Fine',
      said: 'two: a database and a journal beside it',
    });
    expect(lines.get('Without a network')!.judged).toBe('Fine');
    expect(lines.get('Installed')!.judged).toBe('See to it');
    expect(lines.get('Installed')!.said).toMatch(/opens like an app|In the browser’s menu/);
    expect(lines.get('Copy outside')!.said).toContain('No copy has been made yet.');
    expect(lines.get('Records')).toEqual({
      judged: 'Fine',
      said: `${before.length} records of 1 tablet: no break from the first to the last.`,
    });
    // Timing was not a tap, and saving it was not a record.
    expect(await readOwnLog(page)).toEqual(before);
  });

  it('fits and has no fault that axe can find in both orientations', async () => {
    for (const viewport of [portrait, landscape]) {
      await page.setViewportSize(viewport);
      expect(await violations(page)).toEqual([]);
      expect(await cut(page)).toEqual([]);
    }
  });

  it('hands on a text with release, browser and figures, and no record and no name', async () => {
    const text = await downloadedText(page, page.getByRole('button', { name: 'Save as a file' }));
    expect(text.trim()).toBe((await page.locator('.self-check-text').innerText()).trim());
    expect(text).toMatch(/^Pacewright first\nMade: .*\nBrowser: .*Chrome/);
    expect(text).toMatch(/^\[Fine\] Records: \d+ records/m);
    expect(text).not.toMatch(/ZEBRA7|QUAGGA|tablet-\w{5,}/);
    await page.getByText('Offered as a download: pacewright-tablet.txt.').waitFor();
  });

  it('finds the record that was changed behind its back, and says so in words', async () => {
    await page.evaluate(
      () =>
        new Promise<void>((resolve) => {
          const opening = indexedDB.open('pacewright');
          opening.onsuccess = () => {
            const store = opening.result.transaction('records', 'readwrite').objectStore('records');
            const reading = store.openCursor();
            reading.onsuccess = () => {
              const cursor = reading.result!;
              cursor.update({ ...cursor.value, stamp: { ...cursor.value.stamp, wallMs: 7 } });
            };
            store.transaction.oncomplete = () => {
              opening.result.close();
              resolve();
            };
          };
        }),
    );
    await tapButton(page, 'Check again');
    await page
      .getByText(/1 break/)
      .first()
      .waitFor();
    const records = (await found(page)).get('Records')!;
    expect(records.judged).toBe('See to it');
    expect(records.said).toContain('Make a copy now');
  });

  it('is found in Records as well, and leads back there', async () => {
    await tapButton(page, 'Back to Records');
    const check = page.getByRole('button', { name: 'Check this tablet' });
    await check.scrollIntoViewIfNeeded();
    await tap(page, check);
    await page.getByRole('heading', { name: 'Check this tablet' }).waitFor();
    await tapButton(page, 'Back to Records');
    await page.getByRole('heading', { name: 'What this tablet holds' }).waitFor();
  });
});

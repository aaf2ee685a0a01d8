import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { beginFirstTurn, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { openScreen } from './support/restore-copy';
import { Site } from './support/site';
import { Tablet } from './support/tablet';
import { tapButton } from './support/tap';

/** Changes the content of one record where it lies, as a failing disk would. */
function spoil(page: Page, sequence: number): Promise<void> {
  return page.evaluate(
    (wanted) =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('pacewright');
        opening.onsuccess = () => {
          const database = opening.result;
          const writing = database.transaction('records', 'readwrite');
          const store = writing.objectStore('records');
          store.getAll().onsuccess = ({ target }) => {
            const records = (target as IDBRequest).result;
            const record = records.find((each: { sequence: number }) => each.sequence === wanted);
            record.stamp.wallMs += 1;
            store.put(record);
          };
          writing.oncomplete = () => {
            database.close();
            resolve();
          };
        };
      }),
    sequence,
  );
}

describe('a record that is not what was written', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let page: Page;

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
    await page.goto(site.url);
    await beginFirstTurn(page, 'K7', 'M', '1:30');
    await tapButton(page, /^End turn/);
    await tapButton(page, 'End the turn');
    await saved(page);
    await spoil(page, 2);
    await page.reload();
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  it('is told in the frame soon after opening, and named by the check', async () => {
    await page.getByRole('link', { name: 'A record is damaged: see Records' }).waitFor({ timeout: 15_000 });
    await openScreen(page, 'Records');
    await page.getByRole('button', { name: 'Check all records' }).click();
    const { device } = (await readOwnLog(page))[0]!;
    await page.getByText(`Record 2 of ${device} is not what was written.`).first().waitFor();
  });

  it('goes into the copy with all others, and the copy says that the log has a break', async () => {
    const { length } = await readOwnLog(page);
    await page.getByRole('button', { name: 'Make a copy' }).click();
    await page.getByText(`${length} records`, { exact: false }).first().waitFor();
    const ready = await page.getByText('read back and sound').innerText();
    expect(ready).toContain(`${length} records`);
    // The record after it goes on from the checksum that was written, so that one still follows.
    expect(ready).toContain('The log has 1 break; everything readable is in the copy.');
  });
});

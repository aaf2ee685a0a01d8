import { writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { chainOf } from '../../src/domain/records/chain';
import { backupFormat } from '../../src/exchange/backup-format';
import { backupOf } from '../support/backup-files';
import { appOnTablet } from './support/app-on-tablet';
import { violations } from './support/axe';
import { beginFirstTurn, partDone, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { lookIntoCopy, openScreen, reviewText, takeItIn } from './support/restore-copy';
import { Site } from './support/site';
import { Tablet } from './support/tablet';
import { tapButton } from './support/tap';

const phrase = 'three blunt drills';

describe('a shop’s copy', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  const other = new Tablet();
  let page: Page;
  let second: Page;
  let file = '';
  let held: Awaited<ReturnType<typeof readOwnLog>>;
  let shown = '';

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
    await page.goto(site.url);
    await beginFirstTurn(page, 'K7', 'M', '1:30');
    await page.waitForTimeout(1_600);
    await partDone(page);
    await tapButton(page, /^Stop/);
    await page.waitForTimeout(1_600);
    await tapButton(page, /^Go on/);
    await tapButton(page, /^End turn/);
    await tapButton(page, 'End the turn');
    // A copy holds what was put right, however it was: a stop named, a stretch put elsewhere, and that taken back.
    const right = page.locator('.settle-right');
    const putRight = async (what: RegExp | string) => {
      const button = right.getByRole('button', { name: what }).first();
      await button.scrollIntoViewIfNeeded();
      await button.click();
    };
    const send = () => right.locator('form button[type=submit]').click();
    await putRight('A stop or a stretch of time');
    expect(await right.getByLabel('From', { exact: true }).inputValue()).toBe('');
    await putRight('Work on parts');
    await right.getByText(/^Give both times/).waitFor();
    const stop = right.getByLabel('Which stop?');
    await stop.selectOption({ index: 1 });
    await putRight('Machine or tool');
    await right.getByRole('button', { name: /^Put .* \(0:0\d\.\d\) under Machine or tool$/ }).waitFor();
    await send();
    await putRight('A stop or a stretch of time');
    expect(await stop.locator('option').last().innerText()).toContain('Machine or tool');
    await stop.selectOption({ index: 1 });
    await putRight('Work on parts');
    await putRight('Stop was not tapped');
    await send();
    await putRight('Take one back');
    await putRight(/Time put elsewhere/);
    await send();
    await right.getByText(/^Taken back: .*Time put elsewhere/).waitFor();
    await saved(page);
    shown = await reviewText(page);
    second = await other.start();
    await second.goto(site.url);
  });
  afterAll(async () => {
    await tablet.discard();
    await other.discard();
    await site.discard();
  });

  it('is made, locked and read back, and its age is told', async () => {
    await openScreen(page, 'Records');
    await page.getByText('No copy has been made yet.').waitFor();
    await page.getByLabel('Lock it with a pass-phrase').check();
    await page.getByLabel('Pass-phrase', { exact: true }).fill(phrase);
    await page.getByLabel('The same again').fill('three blunt drill');
    await tapButton(page, 'Make a copy');
    await page.getByText('The two pass-phrases differ.').waitFor();
    await page.getByLabel('The same again').fill(phrase);
    held = await readOwnLog(page);
    await tapButton(page, 'Make a copy');
    const button = page.getByRole('button', { name: 'Download' });
    await button.waitFor();
    const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
    file = path.join(tablet.profile, download.suggestedFilename());
    await download.saveAs(file);
    expect(download.suggestedFilename()).toMatch(/-locked\.txt$/);
    await page.getByText('Last copy: now.').waitFor();
    await page.getByText('Nothing was recorded since.').waitFor();
  });

  it('is refused with a sentence when it is no copy, and when the pass-phrase is another', async () => {
    const stray = path.join(tablet.profile, 'stray.txt');
    writeFileSync(stray, '{"records": []}\n');
    await lookIntoCopy(second, stray);
    await second.getByText(/This file is no backup of Pacewright.*Nothing was changed\./).waitFor();
    await lookIntoCopy(second, file);
    await second.getByText('This copy is locked. Type its pass-phrase.').waitFor();
    expect(await violations(second)).toEqual([]);
    const field = second.getByRole('textbox', { name: 'Pass-phrase' });
    await field.fill('another');
    await second.getByRole('button', { name: 'Open it' }).click();
    await second.getByText(/The pass-phrase is not the one the file was made with/).waitFor();
    await field.fill(phrase);
    await second.getByRole('button', { name: 'Open it' }).click();
    await second.getByText('New here').waitFor();
    expect(await violations(second)).toEqual([]);
  });

  it('gives another tablet the same records and figures; twice is once', async () => {
    await takeItIn(second);
    expect(await readOwnLog(second)).toEqual(held);
    expect(await reviewText(second)).toBe(shown);
    await lookIntoCopy(second, file);
    await second.getByRole('textbox', { name: 'Pass-phrase' }).fill(phrase);
    await second.getByRole('button', { name: 'Open it' }).click();
    await second.getByText('Everything in this copy is here already.').waitFor();
    expect(await readOwnLog(second)).toEqual(held);
  });

  it('is followed by the check of all records, and the tablet’s own copy of the day is there', async () => {
    await second.getByRole('button', { name: 'Check all records' }).click();
    await second
      .getByText(`${held.length} records of 1 tablet: no break from the first to the last.`)
      .waitFor();
    await second.getByRole('button', { name: /^Look into it: the copy of/ }).waitFor({ timeout: 10_000 });
  });

  it('inside the tablet brings back what is gone from every shelf, in two taps', async () => {
    await second.goto(`${site.url}icon.svg`);
    await second.evaluate(async () => {
      await new Promise((resolve) => {
        indexedDB.deleteDatabase('pacewright').onsuccess = resolve;
      });
      await (await navigator.storage.getDirectory()).removeEntry('pacewright-journal');
    });
    await second.goto(site.url);
    await second.getByText(`${held.length} records that were on this tablet are gone.`).waitFor();
    await tapButton(second, 'Restore …');
    const take = second.getByRole('button', { name: 'Take it in' });
    await take.waitFor();
    await take.click();
    await second.getByText(/taken in\. Everything that was here is as it was/).waitFor();
    expect(await readOwnLog(second)).toEqual(held);
    await second
      .getByText(/on this tablet are gone/)
      .first()
      .waitFor({ state: 'detached' });
  });
});

describe('the supervisor’s PIN', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let page: Page;

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
    await page.goto(site.url);
    await beginFirstTurn(page, 'K7', 'M', '1:30');
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  const change = () => page.getByRole('button', { name: 'Change part M' });
  const shut = () => page.getByText('Locked: changing this needs the supervisor’s PIN.');

  it('keeps Shop and restoring from whoever does not know it, and timing from nobody', async () => {
    await openScreen(page, 'Shop');
    await page.getByRole('button', { name: 'Set the PIN' }).click();
    await page.getByLabel('New PIN, 4 to 12 digits').fill('4711');
    await page.getByLabel('The same again').fill('4711');
    await page.getByRole('button', { name: 'Set the PIN' }).click();
    await shut().waitFor();
    expect(await change().isDisabled()).toBe(true);
    expect(await page.getByRole('button', { name: 'Add a part' }).isDisabled()).toBe(true);
    await openScreen(page, 'Records');
    expect(await page.getByLabel('Choose a copy …').isDisabled()).toBe(true);
    await openScreen(page, 'Pace');
    await page.waitForTimeout(1_600);
    await partDone(page);
    await saved(page);
    expect((await readOwnLog(page)).at(-1)?.fact.kind).toBe('part-done');
  });

  it('opens with the right digits only, also after a reload, and shuts when Pace is opened', async () => {
    await page.reload();
    await openScreen(page, 'Shop');
    await page.getByLabel('PIN', { exact: true }).fill('4712');
    await page.getByRole('button', { name: 'Unlock' }).click();
    await page.getByText('That is not the PIN.').waitFor();
    await page.getByLabel('PIN', { exact: true }).fill('4711');
    await page.getByRole('button', { name: 'Unlock' }).click();
    await page.getByText('Open for changes until Pace is opened.').waitFor();
    expect(await change().isDisabled()).toBe(false);
    await openScreen(page, 'Pace');
    await openScreen(page, 'Shop');
    await shut().waitFor();
  });
});

describe('a copy of another tablet', () => {
  let page: Page;
  const { tablet } = appOnTablet('', (opened) => {
    page = opened;
  });
  const copyUntil = async (wallMs: number) => {
    const stamp = { run: 'elsewhere', monoMs: 1, wallMs, zone: 'Europe/Berlin', offsetMin: 60 };
    const fact = { kind: 'person-added', code: 'K7' } as const;
    const record = { device: 'tablet-z', sequence: 1, stream: 'shop', stamp, fact };
    const records = [{ ...record, chain: chainOf(record, 0) }];
    const file = path.join(tablet.profile, `until-${wallMs}.txt`);
    writeFileSync(file, await backupOf(backupFormat(null), records));
    return file;
  };
  const warning = () => page.getByRole('alert').filter({ hasText: 'clock is ahead' });

  it('says before it is taken in that the clock there is ahead, and how far, where it is', async () => {
    await lookIntoCopy(page, await copyUntil(Date.now()));
    await page.getByText('New here').waitFor();
    expect(await warning().count()).toBe(0);
    await tapButton(page, 'Leave it');
    await lookIntoCopy(page, await copyUntil(Date.UTC(2080, 4, 12, 6, 30)));
    await warning().waitFor();
    expect(await warning().innerText()).toMatch(/12 May 2080, 07:30/);
  });
});

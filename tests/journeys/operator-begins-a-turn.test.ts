import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { Site } from './support/site';
import { Tablet } from './support/tablet';
import { tapButton } from './support/tap';

describe('an operator who begins a turn', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let page: Page;

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
    await page.goto(site.url);
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  it('is told what is missing, and when a code is full', async () => {
    await page.getByText('Choose who and which part').waitFor();
    await page.getByLabel('Code', { exact: true }).pressSequentially('x'.repeat(60));
    await page.getByText('A code has 16 characters at most').waitFor();
    await page.getByLabel('Code', { exact: true }).fill('K7');
    await page.getByLabel('Name, if any').fill('Bracket');
    await page.getByText('A part needs a code.').waitFor();
    await page.getByText('Choose a part').waitFor();
  });

  it('begins with what is typed: Start takes it, without a button for each', async () => {
    await page.getByLabel('Part code').fill('BRKT-3');
    await page.getByLabel(/^Target time for one part/).fill('0:10');
    await page.getByText('K7 · BRKT-3 · target 0:10.0').waitFor();
    await tapButton(page, /^Start/);
    await page.getByText('K7 · BRKT-3 Bracket').waitFor();
  });

  it('begins another turn with the same person and part', async () => {
    await tapButton(page, 'End turn');
    await tapButton(page, 'End the turn');
    await tapButton(page, 'Start another turn');
    expect(await page.getByRole('button', { name: /^K7/ }).getAttribute('aria-pressed')).toBe('true');
    await tapButton(page, /^Start/);
    await page.getByText('K7 · BRKT-3 Bracket').waitFor();
  });

  it('chooses anew once the page was opened again', async () => {
    await tapButton(page, 'End turn');
    await tapButton(page, 'End the turn');
    await page.getByRole('button', { name: 'Start another turn' }).waitFor();
    await page.reload();
    await page.getByText('Choose who and which part').waitFor();
  });
});

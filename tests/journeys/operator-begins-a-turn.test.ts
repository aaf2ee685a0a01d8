import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOnTablet } from './support/app-on-tablet';
import { tapButton } from './support/tap';

describe('an operator who begins a turn', () => {
  let page: Page;
  appOnTablet('', (opened) => {
    page = opened;
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
    await tapButton(page, /^End turn/);
    await tapButton(page, 'End the turn');
    await tapButton(page, 'Start another turn');
    expect(await page.getByRole('button', { name: /^K7/ }).getAttribute('aria-pressed')).toBe('true');
    await tapButton(page, /^Start/);
    await page.getByText('K7 · BRKT-3 Bracket').waitFor();
  });

  it('chooses anew once the page was opened again', async () => {
    await tapButton(page, /^End turn/);
    await tapButton(page, 'End the turn');
    await page.getByRole('button', { name: 'Start another turn' }).waitFor();
    await page.reload();
    await page.getByText('Choose who and which part').waitFor();
  });
});

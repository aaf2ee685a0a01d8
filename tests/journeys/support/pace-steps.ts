import type { Page } from 'playwright-core';
import { tapButton } from './tap';

/** From an empty shop to a running turn, as an operator who has never seen the app would. */
export async function beginFirstTurn(
  page: Page,
  person: string,
  part: string,
  target: string,
): Promise<void> {
  await page.getByLabel('Code', { exact: true }).fill(person);
  await tapButton(page, 'Add code');
  await page.getByLabel('Part code').fill(part);
  await page.getByLabel(/^Target time for one part/).fill(target);
  await tapButton(page, 'Add part');
  await tapButton(page, /^Start/);
  await page.getByRole('button', { name: /^Part done/ }).waitFor();
}

export function partDone(page: Page): Promise<void> {
  return tapButton(page, /^Part done/);
}

/** Waits until the frame says that everything is saved. */
export async function saved(page: Page): Promise<void> {
  await page.locator('.saving[data-saving="saved"]').waitFor();
}

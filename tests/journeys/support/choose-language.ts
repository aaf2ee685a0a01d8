import type { Page } from 'playwright-core';
import { tap } from './tap';

/** Chooses a language on the tablet's own sheet, as a person does who finds its name there. */
export async function chooseLanguage(page: Page, name: string): Promise<void> {
  await tap(page, page.locator('.shell-tablet'));
  const choice = page.getByRole('button', { name, exact: true });
  await choice.scrollIntoViewIfNeeded();
  await Promise.all([page.waitForEvent('load'), tap(page, choice)]);
  await page.locator('.shell-tablet').waitFor();
}

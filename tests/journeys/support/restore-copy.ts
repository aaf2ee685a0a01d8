import type { Page } from 'playwright-core';
import { tap, tapButton } from './tap';

export function openScreen(page: Page, name: string): Promise<void> {
  return tap(page, page.getByRole('link', { name, exact: true }));
}

/** Looks into a copy on the Records screen. */
export async function lookIntoCopy(page: Page, file: string): Promise<void> {
  await openScreen(page, 'Records');
  await page.getByLabel('Choose a copy …').setInputFiles(file);
}

/** Takes the copy in that was looked into, and waits until that is said. */
export async function takeItIn(page: Page): Promise<void> {
  const button = page.getByRole('button', { name: 'Take it in' });
  await button.scrollIntoViewIfNeeded();
  await tapButton(page, 'Take it in');
  await page.getByText(/taken in\. Everything that was here is as it was/).waitFor();
}

/** What Review shows of the newest day, word by word. */
export async function reviewText(page: Page): Promise<string> {
  await openScreen(page, 'Review');
  await page
    .getByRole('heading', { name: /Parts|Day|Lost/ })
    .first()
    .waitFor();
  await page.waitForTimeout(500);
  return page.getByRole('main').innerText();
}

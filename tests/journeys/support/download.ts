import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { tap } from './tap';

/** The text of the file that a tap on this hands over. */
export async function downloadedText(page: Page, button: Locator): Promise<string> {
  return (await downloadedBytes(page, button)).toString('utf8');
}

/** The file that a tap on this hands over. */
export async function downloadedBytes(page: Page, button: Locator): Promise<Buffer> {
  await button.scrollIntoViewIfNeeded();
  const [download] = await Promise.all([page.waitForEvent('download'), tap(page, button)]);
  return readFileSync(await download.path());
}

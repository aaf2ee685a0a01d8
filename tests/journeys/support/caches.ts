import type { Page } from 'playwright-core';

/** The addresses of everything the app keeps for work without a network, and how each came. */
export function keptFiles(page: Page): Promise<{ url: string; type: string }[]> {
  return page.evaluate(async () => {
    const found: { url: string; type: string }[] = [];
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const request of await cache.keys()) {
        found.push({ url: request.url, type: (await cache.match(request))!.type });
      }
    }
    return found;
  });
}

/** Loses files as browsers have been seen to: from the app's cache, and from the browser's own. */
export async function loseFiles(page: Page, urls: readonly string[]): Promise<void> {
  await page.evaluate(async (gone) => {
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const url of gone) await cache.delete(url);
    }
  }, urls);
  await (await page.context().newCDPSession(page)).send('Network.clearBrowserCache');
}

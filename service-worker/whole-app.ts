import type { PrecacheController } from 'workbox-precaching';

const PAGE = 'index.html';
/** What a page names that it cannot start without: its scripts and styles. */
const NAMED = /(?:src|href)="\.?\/?([^":]+\.(?:js|css))"/g;

/**
 * The page of the app, where all that it needs to start is at hand: on the tablet, or in the network. Browsers have
 * been seen to lose single files of a cache, and a page without its script is a blank screen.
 *
 * @throws {Error} when a part can be had from neither
 */
export async function wholeApp(controller: PrecacheController): Promise<Response> {
  const page = await either(controller, PAGE);
  const named = [...(await page.clone().text()).matchAll(NAMED)].map(([, file]) => file!);
  await Promise.all(named.map((file) => either(controller, file)));
  return page;
}

async function either(controller: PrecacheController, file: string): Promise<Response> {
  const kept = await controller.matchPrecache(file);
  if (kept) return kept;
  const fetched = await fetch(file);
  if (!fetched.ok) throw new Error(`${file} is missing`);
  return fetched;
}

/** Fetches again what has gone from the cache. A file that has become another one meanwhile is not taken. */
export async function mend(
  controller: PrecacheController,
  manifest: readonly { url: string; revision: string | null }[],
): Promise<void> {
  const files = await caches.open(controller.strategy.cacheName);
  const there = new Set((await files.keys()).map(({ url }) => url));
  for (const { url, revision } of manifest) {
    const key = controller.getCacheKeyForURL(url)!;
    if (there.has(key)) continue;
    const fetched = await fetch(url, { cache: 'no-cache' });
    const isSame = revision === null || revision === (await revisionOf(fetched.clone()));
    if (fetched.ok && isSame) await files.put(key, fetched);
  }
}

/** As the build reckons it: the beginning of the SHA-256. */
async function revisionOf(file: Response): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', await file.arrayBuffer()));
  return [...hash.subarray(0, 8)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

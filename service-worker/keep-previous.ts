import type { PrecacheController } from 'workbox-precaching';

const PREVIOUS = 'pacewright-previous';
/** In that cache too: which files the release has that is in use. */
const MARK = '/files-of-the-release-in-use';

/**
 * Puts the files of the release in use aside, before they are cleared away for the next one: a page of it that is
 * still open, in another tab, goes on fetching its parts. Only this one release is kept, however many were fetched
 * and never used in between.
 */
export async function keepPrevious(controller: PrecacheController): Promise<void> {
  const next = [...controller.getURLsToCacheKeys().values()];
  const files = await caches.open(controller.strategy.cacheName);
  const inUse: string[] | null = (await (await (await caches.open(PREVIOUS)).match(MARK))?.json()) ?? null;
  const outgoing = (await files.keys()).filter(
    ({ url }) => !next.includes(url) && (inUse === null || inUse.includes(url)),
  );
  if (outgoing.length > 0) await caches.delete(PREVIOUS);
  const previous = await caches.open(PREVIOUS);
  for (const request of outgoing) {
    const file = await files.match(request);
    if (file) await previous.put(request, file);
  }
  await previous.put(MARK, new Response(JSON.stringify(next)));
}

/** A file of the release before this one; else from the network. */
export async function fromPrevious(request: Request): Promise<Response> {
  const kept = await caches.match(request, { cacheName: PREVIOUS, ignoreVary: true });
  return kept ?? fetch(request);
}

import { cleanupOutdatedCaches, PrecacheController, PrecacheRoute } from 'workbox-precaching';
import { NavigationRoute, registerRoute, setCatchHandler } from 'workbox-routing';
import { fromPrevious, keepPrevious } from './keep-previous';
import {
  dropOtherLanguages,
  isLanguage,
  keepLanguages,
  type LanguageScripts,
  languageWords,
} from './languages';
import { mend, wholeApp } from './whole-app';

declare const self: ServiceWorkerGlobalScope & {
  /** The built files, put in by the build from the finished folder. */
  __WB_MANIFEST: { url: string; revision: string | null }[];
  /** The words of languages, of which only those that are spoken are kept. */
  __LANGUAGES__: LanguageScripts;
  /** The pages that save all records without the app, by name: the last thing that may be missing. */
  __RESCUE__: Record<string, string>;
};

/** The page reads the same cache for its start, and is not to wait for what looks after it. */
const MEND_AFTER_MS = 1_000;
const started = () => new Promise((resolve) => setTimeout(resolve, MEND_AFTER_MS));

const manifest = self.__WB_MANIFEST;
const languages = self.__LANGUAGES__;
const rescue = self.__RESCUE__;
const controller = new PrecacheController();
controller.addToCacheList(manifest);

self.addEventListener('install', (event) => {
  controller.install(event);
  event.waitUntil(keepLanguages(languages));
});
self.addEventListener('activate', (event) => {
  event.waitUntil(
    keepPrevious(controller)
      .then(() => controller.activate(event))
      .then(() => dropOtherLanguages(languages)),
  );
});
cleanupOutdatedCaches();

// The page itself goes by the route below, which looks whether it is whole.
registerRoute(new PrecacheRoute(controller, { directoryIndex: '' }));
registerRoute(
  new NavigationRoute(({ event }) => {
    const page = wholeApp(controller);
    (event as FetchEvent).waitUntil(
      page
        .then(started, started)
        .then(() => mend(controller, manifest))
        // Without a network there is nothing to mend with.
        .catch(() => {}),
    );
    return page;
  }),
);
registerRoute(
  ({ url, sameOrigin }) => sameOrigin && isLanguage(languages, url),
  ({ request }) => languageWords(request),
);
registerRoute(
  ({ url, sameOrigin }) => sameOrigin && url.pathname.includes('/assets/'),
  ({ request }) => fromPrevious(request),
);

const types: Readonly<Record<string, string>> = { html: 'text/html', css: 'text/css', js: 'text/javascript' };

setCatchHandler(async ({ request, url }) => {
  const name = request.mode === 'navigate' ? 'rescue.html' : url?.pathname.split('/').at(-1);
  const text = name && rescue[name];
  if (!text) return Response.error();
  return new Response(text, {
    headers: { 'Content-Type': `${types[name.split('.').at(-1)!]}; charset=utf-8` },
  });
});

// The page asks, at a point where no turn and no study runs. This worker never takes over by itself.
self.addEventListener('message', (event) => {
  if (event.data?.type === 'SKIP_WAITING') self.skipWaiting();
  // A page speaks a language that it has from elsewhere: from the network, before there was a worker.
  if (event.data?.type === 'SPOKEN')
    event.waitUntil(keepLanguages(languages, event.data.language).catch(() => {}));
});

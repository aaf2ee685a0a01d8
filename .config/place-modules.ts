import type { Plugin } from 'vite';

interface Modules {
  getModuleIds(): Iterable<string>;
  getModuleInfo(
    id: string,
  ): { readonly importedIds: readonly string[]; readonly dynamicallyImportedIds: readonly string[] } | null;
}

/**
 * Where the app begins, and where the parts begin that come after the first screen. Study and Cell are one place, and
 * Review, Shop and Records, with the copies and the demo: they say the same things, and together they are 8 kB smaller.
 */
const start = /src\/start\.ts$/;
const later: readonly (readonly [place: string, root: RegExp])[] = [
  ['study-and-cell', /src\/screens\/(study\/study|cell\/cell)-screen\.tsx$/],
  [
    'review-shop-and-records',
    /src\/(screens\/(review\/review|shop\/shop|records\/records)-screen\.tsx|copying\.ts|demo\/fill-demo\.ts)$/,
  ],
  ['language-de', /src\/i18n\/german\.ts$/],
  ['language-es', /src\/i18n\/spanish\.ts$/],
  ['language-pseudo', /src\/i18n\/pseudo\.ts$/],
];

/**
 * One script for each place of the app, one for what several of them use, one for the first screen, and one for what
 * Pace brings after its first tap. Left to itself the bundler makes a hundred and more, and a small file hardly
 * compresses: together they were a seventh larger, and the first tap of the day waited for each of them.
 */
export function modulesByPlace(): { plugin: Plugin; placeOf(id: string): string | null } {
  let places = new Map<string, string>();
  return {
    plugin: {
      name: 'modules-by-place',
      apply: 'build',
      buildEnd() {
        places = findPlaces(this);
      },
    },
    placeOf: (id) => places.get(id) ?? null,
  };
}

function findPlaces(modules: Modules): Map<string, string> {
  const ids = [...modules.getModuleIds()];
  const named = (root: RegExp) => ids.filter((id) => root.test(id));
  const atOnce = reach(modules, named(start), new Set(), false);
  const reached = later.map(([place, root]) => [place, reach(modules, named(root), atOnce, true)] as const);
  const roots = new Set(later.flatMap(([, root]) => named(root)));
  const fromFirst = [...atOnce].flatMap((id) => modules.getModuleInfo(id)?.dynamicallyImportedIds ?? []);
  const afterFirst = fromFirst.filter((id) => !roots.has(id));
  const all = [
    ...reached,
    ['after-first', reach(modules, afterFirst, new Set([...atOnce, ...roots]), true)] as const,
  ];
  const places = new Map<string, string>();
  for (const id of ids) {
    // The page names the start itself, which has to stay a file of its own.
    if (atOnce.has(id) && !start.test(id)) places.set(id, 'first');
    const [place, ...others] = all.filter(([, found]) => found.has(id)).map(([name]) => name);
    if (!place) continue;
    const isShared = others.length > 0;
    // What a language shares with the screens is small, and must not bring theirs before the first tap.
    const shared = [place, ...others].some((name) => name.startsWith('language')) ? 'formats' : 'common';
    places.set(id, isShared ? shared : place);
  }
  return places;
}

/** The modules that are imported from these on, without those in `except` and what only they import. */
function reach(
  modules: Modules,
  from: readonly string[],
  except: ReadonlySet<string>,
  withDynamic: boolean,
): Set<string> {
  const found = new Set<string>();
  const waiting = [...from];
  for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
    if (found.has(id) || except.has(id)) continue;
    found.add(id);
    const info = modules.getModuleInfo(id);
    waiting.push(...(info?.importedIds ?? []), ...(withDynamic ? (info?.dynamicallyImportedIds ?? []) : []));
  }
  return found;
}

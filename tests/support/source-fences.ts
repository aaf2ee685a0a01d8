import path from 'node:path';

/** What a layer may import: layers, and packages. `main.tsx` knows every part. */
const layers: Record<string, { layers: string[]; packages: string[] }> = {
  statistics: { layers: [], packages: ['simple-statistics'] },
  domain: { layers: ['statistics'], packages: [] },
  application: { layers: ['domain', 'statistics'], packages: ['@preact/signals'] },
  storage: { layers: ['application/ports', 'domain'], packages: ['idb'] },
  exchange: { layers: ['application/ports', 'domain'], packages: ['@noble/hashes', 'date-fns', 'fflate'] },
  device: { layers: ['application/ports', 'domain'], packages: ['workbox-window'] },
  i18n: { layers: [], packages: [] },
  charts: { layers: ['domain', 'i18n'], packages: ['preact'] },
  screens: {
    layers: ['application', 'domain', 'charts', 'i18n', 'exchange'],
    packages: ['preact', '@preact/signals'],
  },
  demo: { layers: ['domain', 'statistics', 'application/ports'], packages: [] },
};

/** A file of one idea ends before this; past it, it holds two. */
const LONGEST = 300;

/** Code without comments, so that a word in a comment is not taken for a call. */
export function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|[^:])\/\/.*$/gm, '$1');
}

const importForms = [
  /^import\s[^'";]*?from\s+'([^']+)'/gm,
  /^import\s+'([^']+)'/gm,
  /^export\s+(?:type\s+)?[{*][^'";]*?from\s+'([^']+)'/gm,
  /\bimport\(\s*'([^']+)'/g,
];

export function importsOf(text: string): string[] {
  const code = withoutComments(text);
  return importForms.flatMap((form) => [...code.matchAll(form)].map((found) => found[1]!));
}

/** The layer rule that a file breaks, in words; null when it keeps them all. */
function brokenRule(file: string, text: string): string | null {
  const layer = file.split('/')[0]!;
  const allowed = layers[layer];
  if (!allowed) return null;
  for (const wanted of importsOf(text)) {
    if (/\.css$/.test(wanted)) continue;
    if (wanted.startsWith('.')) {
      const target = path.posix.join(path.posix.dirname(file), wanted);
      const isAllowed =
        target.startsWith(`${layer}/`) || allowed.layers.some((other) => target.startsWith(`${other}/`));
      if (!isAllowed) return `${file} imports ${target}`;
    } else {
      const name = wanted
        .split('/')
        .slice(0, wanted.startsWith('@') ? 2 : 1)
        .join('/');
      if (!allowed.packages.includes(name)) return `${file} imports ${wanted}`;
    }
  }
  return null;
}

/** Calls that only src/device may make. */
function readsTheMachine(file: string, text: string): string | null {
  if (file.startsWith('device/')) return null;
  const call = /\b(Date\.now|performance\.now|Math\.random|new Date\(\))/.exec(withoutComments(text));
  return call ? `${file} calls ${call[0]}` : null;
}

const code = (text: string, wanted: RegExp) => wanted.exec(withoutComments(text))?.[0] ?? null;
const isStorage = (file: string) => file.startsWith('storage/');

/** A rule that every source file keeps, with a fault that it must find, and what only looks like one. */
export interface Fence {
  readonly says: string;
  /** The fault in a file, in words; null where it keeps the rule. */
  readonly finds: (file: string, text: string) => string | null;
  readonly planted: readonly (readonly [file: string, text: string])[];
  readonly fine: readonly (readonly [file: string, text: string])[];
}

const lines = (count: number) => 'a;\n'.repeat(count);

export const fences: readonly Fence[] = [
  {
    says: 'imports only what lies below its layer, and only the packages of its layer',
    finds: brokenRule,
    planted: [
      ['domain/day/x.ts', "import { a } from '../../storage/migrations';"],
      ['domain/day/x.ts', "import type { A } from '../../screens/app';"],
      ['statistics/x.ts', "export { a } from '../domain/group-by';"],
      ['charts/x.tsx', "import { a } from '../application/bench';"],
      ['screens/pace/x.tsx', "const a = await import('idb');"],
      ['application/x.ts', "import 'date-fns';"],
    ],
    fine: [
      ['domain/day/x.ts', "import { a } from '../shop/shop';"],
      ['domain/day/x.ts', "// import { a } from '../../storage/migrations';"],
    ],
  },
  {
    says: 'leaves clock and chance to src/device',
    finds: readsTheMachine,
    planted: [
      ['domain/x.ts', 'const t = Date.now();'],
      ['screens/x.tsx', 'const t = performance.now();'],
      ['demo/x.ts', 'const r = Math.random();'],
      ['application/x.ts', 'const d = new Date();'],
    ],
    fine: [
      ['domain/x.ts', '// never Date.now()\n'],
      ['device/x.ts', 'const t = Date.now();'],
      ['domain/x.ts', 'const d = new Date(wallMs);'],
    ],
  },
  {
    says: 'has a name of its own, never index, utils, helpers or types',
    finds: (file) => (/(^|\/)(index|utils?|helpers?|types?)\.tsx?$/.test(file) ? file : null),
    planted: ['screens/utils.ts', 'domain/day/index.ts', 'charts/helper.tsx', 'types.ts'].map((file) => [
      file,
      '',
    ]),
    fine: [['domain/day/utilisation.ts', '']],
  },
  {
    says: 'is written in kebab-case',
    finds: (file) => (/^([a-z0-9-]+\/)*[a-z0-9-]+(\.d)?\.tsx?$/.test(file) ? null : file),
    planted: ['screens/PartDone.tsx', 'domain/part_done.ts', 'Domain/part-done.ts'].map((file) => [file, '']),
    fine: [['screens/part-done.tsx', '']],
  },
  {
    says: `has at most ${LONGEST} lines`,
    finds: (file, text) => (text.split('\n').length - 1 > LONGEST ? file : null),
    planted: [['domain/x.ts', lines(LONGEST + 1)]],
    fine: [['domain/x.ts', lines(LONGEST)]],
  },
  {
    says: 'exports by name only',
    finds: (file, text) => (/^export default/m.test(text) ? file : null),
    planted: [['domain/x.ts', 'export default function x() {}']],
    fine: [['domain/x.ts', 'export function x() {}']],
  },
  {
    says: 'uses no any and switches no check off',
    // The compiler is silenced from a comment, so that is looked for in the text with its comments.
    finds: (_, text) =>
      code(text, /\bas any\b|: any\b/) ?? /@ts-(ignore|nocheck|expect-error)/.exec(text)?.[0] ?? null,
    planted: [
      ['domain/x.ts', 'const a = b as any;'],
      ['domain/x.ts', 'function a(b: any) {}'],
      ['domain/x.ts', '// @ts-expect-error it is a number\nconst a: string = 1;'],
      ['domain/x.ts', '/* @ts-ignore */'],
    ],
    fine: [['domain/x.ts', '/** of any: kind, as any other */']],
  },
  {
    says: 'asks no network: what a page needs was fetched by the browser or the worker',
    finds: (_, text) =>
      code(
        text,
        /\b(fetch\(|XMLHttpRequest|WebSocket|EventSource|sendBeacon|WebTransport|RTCPeerConnection|importScripts)/,
      ),
    planted: [
      ['screens/x.tsx', "await fetch('./data.json');"],
      ['device/x.ts', 'new XMLHttpRequest();'],
      ['device/x.ts', "navigator.sendBeacon('/', times);"],
      ['device/x.ts', "new WebSocket('wss://example.org');"],
    ],
    fine: [['device/x.ts', '// no fetch() here\nconst prefetch = 1;']],
  },
  {
    says: 'opens every transaction that writes with strict durability',
    finds: (file, text) =>
      isStorage(file)
        ? ([...withoutComments(text).matchAll(/'readwrite'[^)]*\)/g)].find(
            ([call]) => !call.includes("durability: 'strict'"),
          )?.[0] ?? null)
        : null,
    planted: [
      ['storage/x.ts', "database.transaction('records', 'readwrite')"],
      ['storage/x.ts', "database.transaction('records', 'readwrite', { durability: 'relaxed' })"],
    ],
    fine: [['storage/x.ts', "database.transaction('records', 'readwrite', { durability: 'strict' })"]],
  },
  {
    says: 'writes in transactions it can see: no shortcut of idb, which would be relaxed',
    finds: (file, text) => (isStorage(file) ? code(text, /\bdatabase\.(put|add|delete|clear)\(/) : null),
    planted: [['storage/x.ts', "await database.put('records', record);"]],
    fine: [['storage/x.ts', "await database.get('records', key);"]],
  },
  {
    says: 'never deletes a database',
    finds: (_, text) => code(text, /deleteDatabase|deleteDB/),
    planted: [['storage/x.ts', "indexedDB.deleteDatabase('pacewright');"]],
    fine: [['storage/x.ts', '// deleteDatabase would lose everything']],
  },
  {
    says: 'counts on nothing that browsers leave out when a page goes away',
    finds: (_, text) => code(text, /['"](before)?unload['"]|onbeforeunload/),
    planted: [
      ['device/x.ts', "addEventListener('beforeunload', save);"],
      ['device/x.ts', 'window.onbeforeunload = save;'],
    ],
    fine: [['device/x.ts', "addEventListener('pagehide', save);"]],
  },
];

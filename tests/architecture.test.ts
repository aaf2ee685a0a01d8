import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const top = fileURLToPath(new URL('..', import.meta.url));

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

interface Source {
  /** From src, with slashes. */
  readonly file: string;
  readonly text: string;
}

function sourcesUnder(folder: string): Source[] {
  return readdirSync(path.join(top, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => {
      const full = path.join(entry.parentPath, entry.name);
      return {
        file: path.relative(path.join(top, folder), full).split(path.sep).join('/'),
        text: readFileSync(full, 'utf8'),
      };
    });
}

const sources = sourcesUnder('src');

/** Code without comments, so that a word in a comment is not taken for a call. */
function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|[^:])\/\/.*$/gm, '$1');
}

const importForms = [
  /^import\s[^'";]*?from\s+'([^']+)'/gm,
  /^import\s+'([^']+)'/gm,
  /^export\s+(?:type\s+)?[{*][^'";]*?from\s+'([^']+)'/gm,
  /\bimport\(\s*'([^']+)'/g,
];

function importsOf(text: string): string[] {
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

describe('the layers', () => {
  it('import only what lies below them', () => {
    expect(sources.map(({ file, text }) => brokenRule(file, text)).filter(Boolean)).toEqual([]);
  });

  it('would be told apart: a planted import from domain to storage, and one of idb in a screen, are seen', () => {
    expect(brokenRule('domain/day/x.ts', "import { a } from '../../storage/migrations';")).toBe(
      'domain/day/x.ts imports storage/migrations',
    );
    expect(brokenRule('screens/pace/x.tsx', "const a = await import('idb');")).toBe(
      'screens/pace/x.tsx imports idb',
    );
    expect(brokenRule('domain/day/x.ts', "import { a } from '../shop/shop';")).toBeNull();
  });

  it('leave clock and chance to src/device', () => {
    expect(sources.map(({ file, text }) => readsTheMachine(file, text)).filter(Boolean)).toEqual([]);
  });

  it('would be told apart: a planted Date.now in the domain is seen, one in a comment is not', () => {
    expect(readsTheMachine('domain/x.ts', 'const t = Date.now();')).toBe('domain/x.ts calls Date.now');
    expect(readsTheMachine('domain/x.ts', '// never Date.now()\n')).toBeNull();
  });
});

describe('every source file', () => {
  it('has a name of its own, never index, utils, helpers or types', () => {
    const vague = sources.filter(({ file }) => /(^|\/)(index|utils?|helpers?|types?)\.tsx?$/.test(file));
    expect(vague.map(({ file }) => file)).toEqual([]);
  });

  it('is written in kebab-case', () => {
    const odd = sources.filter(({ file }) => !/^([a-z0-9-]+\/)*[a-z0-9-]+(\.d)?\.tsx?$/.test(file));
    expect(odd.map(({ file }) => file)).toEqual([]);
  });

  it(`has at most ${LONGEST} lines`, () => {
    const long = sources.filter(({ text }) => text.split('\n').length - 1 > LONGEST);
    expect(long.map(({ file }) => file)).toEqual([]);
  });

  it('exports by name only', () => {
    const unnamed = sources.filter(({ text }) => /^export default/m.test(text));
    expect(unnamed.map(({ file }) => file)).toEqual([]);
  });

  it('uses no any and switches no check off', () => {
    const soft = sources.filter(
      ({ text }) =>
        // The compiler is silenced from a comment, so that is looked for in the text with its comments.
        /\bas any\b|: any\b/.test(withoutComments(text)) || /@ts-(ignore|nocheck|expect-error)/.test(text),
    );
    expect(soft.map(({ file }) => file)).toEqual([]);
  });
});

describe('storage', () => {
  it('opens every transaction that writes with strict durability', () => {
    const loose = sources
      .filter(({ file }) => file.startsWith('storage/'))
      .flatMap(({ file, text }) =>
        [...withoutComments(text).matchAll(/'readwrite'[^)]*\)/g)]
          .filter(([call]) => !call.includes("durability: 'strict'"))
          .map(([call]) => `${file}: ${call}`),
      );
    expect(loose).toEqual([]);
  });

  it('writes in transactions it can see: no shortcut of idb, which would be relaxed', () => {
    const shortcuts = sources
      .filter(({ file }) => file.startsWith('storage/'))
      .filter(({ text }) => /\bdatabase\.(put|add|delete|clear)\(/.test(withoutComments(text)));
    expect(shortcuts.map(({ file }) => file)).toEqual([]);
  });

  it('never deletes a database', () => {
    const deleting = sources.filter(({ text }) => /deleteDatabase|deleteDB/.test(withoutComments(text)));
    expect(deleting.map(({ file }) => file)).toEqual([]);
  });
});

describe('the page', () => {
  it('counts on nothing that browsers leave out when a page goes away', () => {
    const hoping = sources.filter(({ text }) =>
      /['"](before)?unload['"]|onbeforeunload/.test(withoutComments(text)),
    );
    expect(hoping.map(({ file }) => file)).toEqual([]);
  });
});

describe('the server', () => {
  it('is never told to have the records deleted', () => {
    const configured = readdirSync(path.join(top, '.config')).filter((name) =>
      /clear-site-data/i.test(readFileSync(path.join(top, '.config', name), 'utf8')),
    );
    expect(configured).toEqual([]);
  });
});

describe('the service worker', () => {
  it('imports nothing of the page', () => {
    const crossing = sourcesUnder('service-worker').flatMap(({ text }) =>
      importsOf(text).filter((wanted) => wanted.startsWith('.') && wanted.includes('src')),
    );
    expect(crossing).toEqual([]);
  });

  it('takes over only when it is asked', () => {
    const [worker] = sourcesUnder('service-worker').filter(({ file }) => file === 'service-worker.ts');
    const calls = withoutComments(worker!.text).match(/.*skipWaiting\(\).*/g) ?? [];
    expect(calls).toHaveLength(1);
    expect(calls[0]).toContain("'SKIP_WAITING'");
    expect(withoutComments(worker!.text)).not.toContain('clients.claim');
  });
});

describe('the top level', () => {
  it('holds what the design names and nothing else', () => {
    const known = [
      'DEVELOPERS.md',
      'LICENSE',
      'README.md',
      'fixtures',
      'node_modules',
      'dist',
      'package-lock.json',
      'package.json',
      'service-worker',
      'src',
      'tests',
      'tsconfig.json',
    ];
    const extra = readdirSync(top).filter((name) => !name.startsWith('.') && !known.includes(name));
    expect(extra).toEqual([]);
  });

  it('has a lockfile without download addresses', () => {
    const lock = readFileSync(path.join(top, 'package-lock.json'), 'utf8');
    expect(lock).not.toContain('"resolved"');
  });
});

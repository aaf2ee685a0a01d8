import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { fences, importsOf, withoutComments } from './support/source-fences';

const top = fileURLToPath(new URL('..', import.meta.url));

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

for (const { says, finds, planted, fine } of fences) {
  describe(`every source file ${says}`, () => {
    it('in src', () => {
      const faults = sources.map(({ file, text }) => ({ file, fault: finds(file, text) }));
      expect(faults.filter(({ fault }) => fault !== null)).toEqual([]);
    });

    it.each(planted)('or is found out: in %s a planted %j', (file, text) => {
      expect(finds(file, text)).not.toBeNull();
    });

    it.each(fine)('and is left in peace: in %s what is sound, %j', (file, text) => {
      expect(finds(file, text)).toBeNull();
    });
  });
}

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

  /** Lines that let the worker take over, but for the one that answers a message. */
  const takesOver = (text: string) =>
    (withoutComments(text).match(/.*(skipWaiting\(\)|clients\.claim).*/g) ?? []).filter(
      (line) => !(line.includes("'SKIP_WAITING'") && line.includes('skipWaiting()')),
    );

  it('takes over only when it is asked', () => {
    const [worker] = sourcesUnder('service-worker').filter(({ file }) => file === 'service-worker.ts');
    expect(takesOver(worker!.text)).toEqual([]);
    expect(withoutComments(worker!.text).match(/skipWaiting\(\)/g)).toHaveLength(1);
    expect(takesOver("addEventListener('install', () => skipWaiting());")).toHaveLength(1);
    expect(takesOver('event.waitUntil(clients.claim());')).toHaveLength(1);
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

import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync } from 'node:zlib';
import { top } from './prepare.mjs';

/**
 * Kilobytes of 1,000 bytes, compressed with brotli. Fails when over, and when a named file is missing.
 *
 * All scripts were meant to stay under 150; DEVELOPERS.md tells why they do not. They count with their English words.
 * A tablet keeps one other language at most, or as many as are spoken at it; the largest is the one that counts.
 */
export const budgets = { paceScreen: 30, allScripts: 264, language: 45, kept: 350 };

/** The words of a language other than English. */
const isLanguage = (file) => /^assets\/language-.*\.js$/.test(file);

/**
 * Sizes of a built app, in kilobytes: what the Pace screen needs, all scripts with their English words, the words of
 * the largest other language, and all that a tablet keeps offline that speaks it.
 */
export function sizes(dist) {
  const compressed = (file) => brotliCompressSync(readFileSync(path.join(dist, file))).length / 1_000;
  const files = readdirSync(dist, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(dist, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'))
    .filter((file) => !file.startsWith('.vite/'));
  const manifest = JSON.parse(readFileSync(path.join(dist, '.vite/manifest.json'), 'utf8'));
  const needed = new Set();
  const need = (name) => {
    const chunk = manifest[name];
    if (!chunk) throw new Error(`The build has no ${name}.`);
    if (needed.has(chunk.file)) return;
    needed.add(chunk.file);
    for (const other of chunk.imports ?? []) need(other);
  };
  // The page names the first script; where that lies in a place of its own it is no entry of the manifest.
  const page = readFileSync(path.join(dist, 'index.html'), 'utf8');
  const named = [...page.matchAll(/src="\.\/(assets\/[^"]+\.js)"/g)].map(([, file]) => file);
  for (const [name, chunk] of Object.entries(manifest)) if (named.includes(chunk.file)) need(name);
  if (needed.size === 0) throw new Error('The page names no script.');
  const sum = (list) => list.reduce((total, file) => total + compressed(file), 0);
  const language = Math.max(...files.filter(isLanguage).map(compressed));
  return {
    paceScreen: sum([...needed]),
    allScripts: sum(files.filter((file) => file.endsWith('.js') && !isLanguage(file))),
    language,
    kept: sum(files.filter((file) => !isLanguage(file))) + language,
    files: files.map((file) => ({ file, size: compressed(file) })).sort((a, b) => b.size - a.size),
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const found = sizes(path.resolve(top, process.env.PACEWRIGHT_DIST ?? 'dist'));
  for (const { file, size } of found.files)
    process.stdout.write(`${size.toFixed(1).padStart(8)} kB  ${file}\n`);
  for (const [name, budget] of Object.entries(budgets)) {
    const isOver = found[name] > budget;
    process.stdout.write(
      `${found[name].toFixed(1).padStart(8)} kB  ${name} of ${budget}${isOver ? ' — over' : ''}\n`,
    );
    if (isOver) process.exitCode = 1;
  }
}

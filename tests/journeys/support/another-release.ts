import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

/** How the build names its release in its files. */
const NAMED = /(release[=:])(["'`])first\2/g;

/**
 * Another release made from a built one, in a folder of its own, as a build of other sources would be: every hashed
 * file has another name, every file that names one has another content, and the page says another release.
 */
export function anotherRelease(dist: string, release: string): string {
  const folder = mkdtempSync(path.join(tmpdir(), `pacewright-${release}-`));
  cpSync(dist, folder, { recursive: true });
  const assets = readdirSync(path.join(folder, 'assets'));
  const renamed = new Map(
    assets.map((name) => [name, name.replace(/.{8}(?=\.\w+$)/, hashOf(name + release))]),
  );
  for (const [name, other] of renamed) {
    renameSync(path.join(folder, 'assets', name), path.join(folder, 'assets', other));
  }
  const texts = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    /\.(js|css|html|json)$/.test(name),
  );
  let worker = '';
  for (const name of texts) {
    const before = readFileSync(path.join(folder, name), 'utf8');
    let text = before;
    for (const [old, other] of renamed) text = text.replaceAll(old, other);
    if (name.startsWith('assets')) text = text.replace(NAMED, `$1$2${release}$2`);
    if (name === 'sw.js') worker = text;
    writeFileSync(path.join(folder, name), text);
  }
  // What has no hash in its name has its revision in the worker's list.
  for (const name of texts.filter((each) => !each.startsWith('assets'))) {
    const [old, other] = [dist, folder].map((of) => revisionOf(readFileSync(path.join(of, name))));
    worker = worker.replaceAll(old!, other!);
  }
  writeFileSync(path.join(folder, 'sw.js'), worker);
  return folder;
}

function hashOf(text: string): string {
  return createHash('sha256').update(text).digest('base64url').slice(0, 8);
}

function revisionOf(content: Buffer): string {
  return createHash('sha256').update(content).digest('hex').slice(0, 16);
}

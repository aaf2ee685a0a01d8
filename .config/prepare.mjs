import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { findChromium } from './find-chromium.mjs';

export const top = fileURLToPath(new URL('..', import.meta.url));

/** Runs a command in the project's folder; its output goes to standard error. Leaves on failure. */
export function run(command, args, options = {}) {
  const result = spawnSync(command, args, { cwd: top, stdio: ['ignore', 2, 2], ...options });
  if (result.status !== 0) {
    process.stderr.write(`${[command, ...args].join(' ')} failed.\n`);
    process.exit(result.status ?? 1);
  }
}

/** The program of an installed package, run by this Node: works where npx does not reach the network. */
export function tool(name, args, options = {}) {
  const manifest = path.join(top, 'node_modules', name, 'package.json');
  const { bin } = JSON.parse(readFileSync(manifest, 'utf8'));
  const file = typeof bin === 'string' ? bin : Object.values(bin)[0];
  run(process.execPath, [path.join(top, 'node_modules', name, file), ...args], options);
}

/** Installs the packages when they are missing or older than the lockfile says. */
export function installPackages() {
  const wanted = packagesOf(path.join(top, 'package-lock.json'));
  const installed = packagesOf(path.join(top, 'node_modules/.package-lock.json'));
  const missing = Object.entries(wanted).some(
    ([name, { version, optional }]) => name !== '' && !optional && installed[name]?.version !== version,
  );
  if (missing) run('npm', ['ci', '--no-audit', '--no-fund'], { shell: process.platform === 'win32' });
}

/** Finds a Chromium for the tests; as root on Debian it installs the distribution's own. */
export function requireChromium() {
  if (findChromium()) return;
  const isDebianRoot = existsSync('/usr/bin/apt-get') && process.getuid?.() === 0;
  if (isDebianRoot) {
    run('apt-get', ['update', '-q']);
    run('apt-get', ['install', '-q', '-y', '--no-install-recommends', 'chromium', 'fonts-dejavu-core']);
  }
  if (findChromium()) return;
  process.stderr.write(
    'The tests need a Chromium: install one (on Debian: apt-get install chromium) or set CHROMIUM to its path.\n',
  );
  process.exit(1);
}

function packagesOf(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')).packages : {};
}

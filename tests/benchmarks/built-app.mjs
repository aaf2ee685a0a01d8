import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { requireChromium, tool } from '../../.config/prepare.mjs';

/** The app as it ships: built into a folder of its own, or the one that PACEWRIGHT_DIST names and somebody built. */
export function builtApp() {
  requireChromium();
  const given = process.env.PACEWRIGHT_DIST;
  if (given) return { dist: given, discard() {} };
  const dist = mkdtempSync(path.join(tmpdir(), 'pacewright-bench-'));
  tool('vite', ['build', '--config', '.config/vite.config.ts', '--logLevel', 'error'], {
    env: { ...process.env, NODE_ENV: 'production', PACEWRIGHT_DIST: dist },
  });
  return { dist, discard: () => rmSync(dist, { recursive: true }) };
}

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { TestProject } from 'vitest/node';
import { tool } from '../../../.config/prepare.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** The folder of the built app. */
    dist: string;
  }
}

/** Builds the app as it ships, once for all journeys, outside the project's folder. */
export default function buildApp(project: TestProject): () => void {
  const dist = mkdtempSync(path.join(tmpdir(), 'pacewright-'));
  buildRelease(dist, 'first');
  project.provide('dist', dist);
  return () => rmSync(dist, { recursive: true, force: true });
}

/** Builds one release into a folder; its name is part of the built files, so two releases differ. */
export function buildRelease(dist: string, release: string): void {
  tool('vite', ['build', '--config', '.config/vite.config.ts', '--logLevel', 'error'], {
    env: { ...process.env, NODE_ENV: 'production', PACEWRIGHT_DIST: dist, PACEWRIGHT_RELEASE: release },
  });
}

import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { browserArguments, findChromium } from './find-chromium.mjs';

const top = fileURLToPath(new URL('..', import.meta.url));
const oxc = { jsx: { runtime: 'automatic' as const, importSource: 'preact' } };
const define = { __RELEASE__: JSON.stringify('test') };

export default defineConfig({
  root: top,
  test: {
    projects: [
      {
        root: top,
        oxc,
        define,
        test: {
          name: 'node',
          include: ['tests/**/*.test.{ts,tsx}'],
          setupFiles: ['tests/support/every-record-reads-back.ts'],
          exclude: ['tests/journeys/**', 'tests/browser/**', 'tests/benchmarks/**'],
          // A guard against what never ends, not a measure: machines that run this may be busy.
          testTimeout: 120_000,
        },
      },
      {
        root: top,
        oxc,
        define,
        cacheDir: path.join(top, 'node_modules/.vite-browser'),
        optimizeDeps: { include: ['idb', 'preact', 'preact/hooks', 'preact/jsx-runtime', '@preact/signals'] },
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.{ts,tsx}'],
          testTimeout: 30_000,
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({
              launchOptions: { executablePath: findChromium() ?? '', args: browserArguments },
            }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
      {
        root: top,
        oxc,
        define,
        test: {
          name: 'journeys',
          include: ['tests/journeys/**/*.test.ts'],
          globalSetup: ['tests/journeys/support/build-app.ts'],
          // A journey waits more than it reckons: two at a time keep two cores busy. Each has a browser of its own.
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
          // As above, a guard and no measure.
          testTimeout: 600_000,
          hookTimeout: 240_000,
        },
      },
    ],
  },
});

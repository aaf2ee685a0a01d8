import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, defineConfig, minifySync, type Plugin } from 'vite';
import { modulesByPlace } from './place-modules.ts';

const top = fileURLToPath(new URL('..', import.meta.url));
// A second folder lets a test build a second release beside the first.
const dist = path.resolve(top, process.env.PACEWRIGHT_DIST ?? 'dist');
const version: string = JSON.parse(readFileSync(path.join(top, 'package.json'), 'utf8')).version;
const release = process.env.PACEWRIGHT_RELEASE ?? version;

/** The words of a language other than English. */
const LANGUAGE = /^assets\/language-([a-z]+)-[^/]*\.js$/;

/**
 * Builds the service worker after the page, because its list of files is read from the
 * finished folder: the bundler's own list leaves out everything copied from src/public.
 */
function serviceWorker(): Plugin {
  let isWritten = false;
  return {
    name: 'service-worker',
    apply: 'build',
    writeBundle() {
      isWritten = true;
    },
    closeBundle: {
      order: 'post',
      sequential: true,
      async handler() {
        // Also called when the page could not be built; that fault is the one to show.
        if (!isWritten) return;
        const files = readdirSync(dist, { recursive: true, withFileTypes: true })
          .filter((file) => file.isFile() && !/\.map$|^sw\.js$|^manifest\.json$/.test(file.name))
          .map((file) => path.relative(dist, path.join(file.parentPath, file.name)).split(path.sep).join('/'))
          .sort();
        const languages = files.filter((file) => LANGUAGE.test(file));
        const manifest = files
          .filter((file) => !languages.includes(file))
          .map((url) => ({
            url,
            revision: url.startsWith('assets/')
              ? null
              : createHash('sha256')
                  .update(readFileSync(path.join(dist, url)))
                  .digest('hex')
                  .slice(0, 16),
          }));
        await build({
          configFile: false,
          root: path.join(top, 'service-worker'),
          publicDir: false,
          logLevel: 'warn',
          define: {
            'self.__WB_MANIFEST': JSON.stringify(manifest),
            'self.__LANGUAGES__': JSON.stringify(
              Object.fromEntries(languages.map((file) => [LANGUAGE.exec(file)![1], file])),
            ),
            'self.__RESCUE__': JSON.stringify(
              Object.fromEntries(
                ['rescue.html', 'rescue.css', 'rescue.js', 'rescue-file.js'].map((name) => [
                  name,
                  readFileSync(path.join(dist, name), 'utf8'),
                ]),
              ),
            ),
            'process.env.NODE_ENV': '"production"',
          },
          build: {
            outDir: dist,
            emptyOutDir: false,
            minify: 'terser',
            terserOptions: { ecma: 2020, compress: { passes: 2, ecma: 2020, unsafe_arrows: true } },
            rolldownOptions: {
              input: path.join(top, 'service-worker/service-worker.ts'),
              output: { format: 'iife', entryFileNames: 'sw.js', codeSplitting: false },
            },
          },
        });
      },
    },
  };
}

/**
 * The scripts of src/public are written to be read, and served without their comments: each stays one file that
 * needs no other, and the service worker holds them a second time.
 */
function withoutComments(): Plugin {
  return {
    name: 'without-comments',
    apply: 'build',
    writeBundle() {
      for (const name of readdirSync(dist).filter((each) => each.endsWith('.js'))) {
        const file = path.join(dist, name);
        const text = readFileSync(file, 'utf8');
        const { code, errors } = minifySync(name, text, { module: /^(import|export) /m.test(text) });
        if (errors.length > 0) throw new Error(`${name}: ${errors[0]!.message}`);
        writeFileSync(file, code);
      }
    },
  };
}

/**
 * What the page may load and reach: itself. Written into the built page, so that it holds on any server; the
 * development server needs inline styles and is left alone.
 */
function contentSecurityPolicy(): Plugin {
  const policy = [
    "default-src 'self'",
    "connect-src 'self'",
    "img-src 'self' data: blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  return {
    name: 'content-security-policy',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: policy },
        injectTo: 'head-prepend',
      },
    ],
  };
}

const byPlace = modulesByPlace();

export default defineConfig({
  root: path.join(top, 'src'),
  base: './',
  publicDir: path.join(top, 'src/public'),
  cacheDir: path.join(top, 'node_modules/.vite'),
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  // Its package names the build for browsers of ten years ago first.
  resolve: { alias: { 'workbox-window': 'workbox-window/build/workbox-window.prod.mjs' } },
  define: { __RELEASE__: JSON.stringify(release) },
  build: {
    outDir: dist,
    emptyOutDir: true,
    target: 'es2022',
    // Leaves 1 % less to be downloaded than Vite's own, for a build that takes some seconds more; a second pass, half
    // a kilobyte; arrows where a function needs no `this` of its own, since nothing here calls such a one with `new`.
    minify: 'terser',
    terserOptions: { ecma: 2020, module: true, compress: { passes: 2, ecma: 2020, unsafe_arrows: true } },
    modulePreload: {
      polyfill: false,
      // Names of files do not compress, and every script is on the tablet after the first visit: only the first
      // screen's own are fetched ahead. Styles are named in any case, or a part would show without them.
      resolveDependencies: (_file, others, { hostType }) =>
        hostType === 'html' ? others : others.filter((other) => other.endsWith('.css')),
    },
    // Tells the size check which files a screen needs; not part of what is kept offline.
    manifest: true,
    rolldownOptions: {
      // It would tell everybody who starts the app how long the minifier took.
      checks: { bundlerTimings: false },
      output: {
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: [{ name: byPlace.placeOf, debugName: 'place' }],
        },
      },
    },
  },
  plugins: [contentSecurityPolicy(), byPlace.plugin, withoutComments(), serviceWorker()],
});

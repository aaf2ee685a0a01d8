// Tap to saved, in the built app and on a bare page with one button and one strict IndexedDB put of the same
// bytes, driven the same way in the same run. Arguments: how many records lie in the log already, and how many taps a block has.
//   npm run bench:tap [-- 1000000 25]
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { browserArguments, findChromium } from '../../.config/find-chromium.mjs';
import { serve } from '../../.config/serve.mjs';
import { builtApp } from './built-app.mjs';
import { figure } from './figure.mjs';
import { fillLog, sampleRecord } from './fill-log.mjs';

const filled = Number(process.argv[2] ?? 0);
const BLOCKS = 4;
const TAPS = Number(process.argv[3] ?? 25);
/** A part takes longer than a finger bounces: sooner, each tap would be asked about as a second one. */
const BETWEEN_MS = 1_700;
/** A finger lies on the surface for so long. Let go in the same instant, its end would ask for a layout before the answer. */
const PRESS_MS = 80;

// It shows what the app shows, and when: the count, once it is saved.
const bare = `<!doctype html><title>bare</title><button id="tap" style="width:600px;height:300px">Tap</button>
<script src="bare.js"></script>`;
const bareScript = `
const times = [];
const opening = indexedDB.open('bare', 1);
opening.onupgradeneeded = () => opening.result.createObjectStore('records', { keyPath: 'sequence' });
opening.onsuccess = () => {
  let sequence = 0;
  document.querySelector('#tap').addEventListener('pointerdown', (event) => {
    sequence += 1;
    const tap = event.currentTarget;
    const transaction = opening.result.transaction('records', 'readwrite', { durability: 'strict' });
    transaction.objectStore('records').add({ ...window.sample, sequence });
    transaction.oncomplete = () => {
      tap.textContent = sequence;
      times.push(performance.now() - event.timeStamp);
    };
  });
  document.body.dataset.ready = 'yes';
};
window.taken = () => times.splice(0);
`;

/** What a filling of minutes leaves the database to sort in its files is no part of a tap: no shop fills its log so fast. */
const AFTER_FILLING_MS = 60_000;

const quantile = (sorted, share) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
const wait = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

const { dist, discard } = builtApp();
// A folder and an origin of its own: the app's service worker answers for every page beside it.
const bareFolder = mkdtempSync(path.join(tmpdir(), 'pacewright-bench-bare-'));
writeFileSync(path.join(bareFolder, 'index.html'), bare);
writeFileSync(path.join(bareFolder, 'bare.js'), bareScript);
const site = await serve({ folder: dist, port: 0 });
const bareSite = await serve({ folder: bareFolder, port: 0 });
const profile = mkdtempSync(path.join(tmpdir(), 'pacewright-bench-profile-'));
const context = await chromium.launchPersistentContext(profile, {
  executablePath: findChromium(),
  args: browserArguments,
  hasTouch: true,
  viewport: { width: 1280, height: 800 },
});

const app = await context.newPage();
await app.goto(site.url);
await app.getByLabel('Code', { exact: true }).waitFor();
if (filled > 0) {
  await fillLog(app, filled);
  await app.reload();
}
await app.getByLabel('Code', { exact: true }).fill('K7');
await app.getByRole('button', { name: 'Add code' }).tap();
await app.getByLabel('Part code').fill('M');
await app.getByRole('button', { name: 'Add part' }).tap();
await app.getByRole('button', { name: /^Start/ }).tap();
await app.getByRole('button', { name: /^Part done/ }).waitFor();
await app.evaluate(() => {
  const times = [];
  let tappedAt = null;
  const mark = document.querySelector('.saving');
  addEventListener(
    'pointerdown',
    (event) => {
      tappedAt = event.timeStamp;
    },
    true,
  );
  new MutationObserver(() => {
    if (mark.dataset.saving !== 'saved' || tappedAt === null) return;
    times.push(performance.now() - tappedAt);
    tappedAt = null;
  }).observe(mark, { attributes: true, attributeFilter: ['data-saving'] });
  window.taken = () => times.splice(0);
});
const floor = await context.newPage();
await floor.goto(bareSite.url);
await floor.evaluate((record) => {
  window.sample = record;
}, sampleRecord);
await floor.locator('body[data-ready]').waitFor();

async function block(page, selector) {
  await page.bringToFront();
  await wait(400);
  const box = await page.locator(selector).first().boundingBox();
  const session = await context.newCDPSession(page);
  const point = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  for (let tap = 0; tap < TAPS; tap += 1) {
    await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [point] });
    await wait(PRESS_MS);
    await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await wait(BETWEEN_MS - PRESS_MS);
  }
  await wait(300);
  return page.evaluate(() => window.taken());
}

if (filled > 0) await wait(AFTER_FILLING_MS);
const times = { app: [], bare: [] };
for (let round = 0; round < BLOCKS; round += 1) {
  times.bare.push(...(await block(floor, '#tap')));
  times.app.push(...(await block(app, 'button:has-text("Part done")')));
}
await context.close();
await site.close();
await bareSite.close();
discard();
rmSync(bareFolder, { recursive: true });
rmSync(profile, { recursive: true, force: true });

const row = (name, list) => {
  const sorted = [...list].sort((a, b) => a - b);
  const [p50, p95, p99] = [0.5, 0.95, 0.99].map((share) => quantile(sorted, share));
  process.stdout.write(
    `${name.padEnd(5)} n ${sorted.length}  p50 ${p50.toFixed(1)} ms  p95 ${p95.toFixed(1)} ms  p99 ${p99.toFixed(1)} ms\n`,
  );
  return { p50, p95 };
};
process.stdout.write(`records in the log beforehand: ${filled}\n`);
const ofApp = row('app', times.app);
const ofBare = row('bare', times.bare);
process.stdout.write(`ratio of the halves ${(ofApp.p50 / ofBare.p50).toFixed(2)}\n`);
figure({
  name: 'tap to saved, 95 of 100, beside a bare strict put',
  ours: ofApp.p95,
  floor: ofBare.p95,
  bound: 1.5,
});

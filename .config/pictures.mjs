// Takes the pictures of the README from the built app:
//
//     node .config/pictures.mjs
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { browserArguments, findChromium } from './find-chromium.mjs';
import { tool, top } from './prepare.mjs';
import { serve } from './serve.mjs';

const folder = path.join(top, 'fixtures/pictures');
mkdirSync(folder, { recursive: true });
const dist = mkdtempSync(path.join(tmpdir(), 'pacewright-pictures-'));
tool('vite', ['build', '--config', '.config/vite.config.ts', '--logLevel', 'error'], {
  env: { ...process.env, NODE_ENV: 'production', PACEWRIGHT_DIST: dist },
});
const site = await serve({ folder: dist, port: 0 });
const browser = await chromium.launch({ executablePath: findChromium(), args: browserArguments });
const context = await browser.newContext({ hasTouch: true, viewport: { width: 1280, height: 800 } });
const page = await context.newPage();
page.setDefaultTimeout(20_000);
const button = (name) => page.getByRole('button', { name });
const picture = async (name) => {
  await page.waitForTimeout(400);
  await page.screenshot({ path: path.join(folder, `${name}.png`) });
};

await page.goto(`${site.url}#/demo/review`);
await page.getByText(/282 good/).waitFor();
await button('Put away').tap();
await picture('review');

await page.goto(`${site.url}#/demo/cell`);
await page.getByRole('button', { name: 'M', exact: true }).tap();
await page.getByText(/M: the hands govern/).waitFor();
await picture('cell');

await page.goto(`${site.url}#/demo/study`);
await page.getByRole('main').getByRole('link').first().tap();
await page.getByRole('heading', { name: 'Study summary sheet' }).waitFor();
await picture('sheet');

await page.goto(`${site.url}#/demo/study/new`);
await page.getByRole('button', { name: /^M/ }).first().tap();
await page.getByLabel('Operator code').fill('K7');
await page.getByLabel('Observer').fill('B4');
await page.getByLabel('The person knows that this is recorded, and why').check();
await button('set a standard time').tap();
await button('To the watch').tap();
await page.locator('.study-surface').first().tap();
for (let tap = 0; tap < 13; tap += 1) {
  await page.waitForTimeout(700 + 90 * (tap % 4));
  // In two lanes the machine's surface stands beside it.
  await page.locator('.study-surface').first().tap();
}
await page.waitForTimeout(900);
await picture('study');
await button('End study').tap();
await button('End it now').tap();

await page.goto(`${site.url}#/demo/pace`);
await page.getByRole('button', { name: /^K7/ }).first().tap();
await page
  .getByRole('button', { name: /WD-1310/ })
  .first()
  .tap();
await button(/^Start/).tap();
await page.waitForTimeout(15_000);
await button(/^Part done/).tap();
await page.waitForTimeout(16_000);
await picture('pace');

await browser.close();
await site.close();
rmSync(dist, { recursive: true });

// How long opening takes with many records in the log, beside the same with few, in one run:
//   npm run bench:open [-- 1000000]
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { browserArguments, findChromium } from '../../.config/find-chromium.mjs';
import { top } from '../../.config/prepare.mjs';
import { serve } from '../../.config/serve.mjs';
import { builtApp } from './built-app.mjs';
import { figure, median } from './figure.mjs';
import { fillLog } from './fill-log.mjs';

const MANY = Number(process.argv[2] ?? 1_000_000);
const FEW = 10_000;
const ROUNDS = 7;
const study = path.join(top, 'fixtures/studies/demo-m-k7-study.csv');

const { dist, discard } = builtApp();
const site = await serve({ folder: dist, port: 0 });

/** Parts that the turn in hand has when it is opened. */
const PARTS = 40;

/**
 * A tablet with this many records, a study, and a turn in hand: times in ms to the turn that goes on, and from there
 * to the study's sheet and to Review.
 */
async function tablet(count) {
  const profile = mkdtempSync(path.join(tmpdir(), 'pacewright-bench-profile-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: findChromium(),
    args: browserArguments,
    hasTouch: true,
    viewport: { width: 1280, height: 800 },
  });
  const page = await context.newPage();
  page.setDefaultTimeout(60_000);
  await page.goto(site.url);
  await page.getByRole('heading', { name: 'Who is at the station?' }).waitFor();
  await fillLog(page, count);
  await page.goto(`${site.url}#/records`);
  await page.getByLabel('Choose a table …').setInputFiles(study);
  await page.waitForURL(/#\/study/);
  await page.goto(`${site.url}#/pace`);
  await page.getByLabel('Code', { exact: true }).fill('K7');
  await page.getByRole('button', { name: 'Add code' }).tap();
  await page.getByLabel('Part code').fill('M');
  await page.getByRole('button', { name: 'Add part' }).tap();
  await page.getByRole('button', { name: /^Start/ }).tap();
  const done = page.getByRole('button', { name: /^Part done/ });
  for (let part = 0; part < PARTS; part += 1) await done.tap();
  await page.locator('.saving[data-saving=saved]').waitFor();
  return {
    count,
    async round() {
      await page.goto('about:blank');
      const began = performance.now();
      await page.goto(`${site.url}#/pace`);
      await done.waitFor();
      const turn = performance.now() - began;
      const open = async (name, sign) => {
        const from = performance.now();
        await page.getByRole('link', { name, exact: true }).click();
        await sign.waitFor();
        return performance.now() - from;
      };
      await open('Study', page.getByRole('heading', { name: 'Studies' }));
      const from = performance.now();
      await page.getByRole('main').getByRole('link').first().click();
      await page.getByRole('heading', { name: 'Study summary sheet' }).waitFor();
      const sheet = performance.now() - from;
      const review = await open('Review', page.getByText(/parts? in \d+ turn/).first());
      return { turn, sheet, review };
    },
    async discard() {
      await context.close();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}

const few = await tablet(FEW);
const many = await tablet(MANY);
const times = { few: [], many: [] };
for (let round = 0; round < ROUNDS; round += 1) {
  times.few.push(await few.round());
  times.many.push(await many.round());
}
await few.discard();
await many.discard();
await site.close();
discard();

const screens = { turn: 'a turn in hand', sheet: 'a study’s sheet', review: 'Review' };
for (const [screen, name] of Object.entries(screens)) {
  const [floor, ours] = [times.few, times.many].map((list) => median(list.map((each) => each[screen])));
  const records = `${MANY.toLocaleString('en')} records beside ${FEW.toLocaleString('en')}`;
  figure({ name: `opening ${name}, ${records}`, ours, floor, bound: 1.5 });
}

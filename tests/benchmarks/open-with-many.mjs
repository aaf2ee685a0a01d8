// How long opening takes with many records in the log, beside the same with few, in one run:
//   npm run bench:open [-- 1000000]
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { browserArguments, findChromium } from '../../.config/find-chromium.mjs';
import { requireChromium, tool } from '../../.config/prepare.mjs';
import { serve } from '../../.config/serve.mjs';
import { fillLog } from './fill-log.mjs';

const MANY = Number(process.argv[2] ?? 1_000_000);
const FEW = 10_000;
const ROUNDS = 7;

requireChromium();
const dist = mkdtempSync(path.join(tmpdir(), 'pacewright-bench-'));
tool('vite', ['build', '--config', '.config/vite.config.ts', '--logLevel', 'error'], {
  env: { ...process.env, NODE_ENV: 'production', PACEWRIGHT_DIST: dist },
});
const site = await serve({ folder: dist, port: 0 });
const median = (list) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)];

/** A tablet with this many records: times in ms to the first screen, and to Review and Study from there. */
async function tablet(count) {
  const profile = mkdtempSync(path.join(tmpdir(), 'pacewright-bench-profile-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: findChromium(),
    args: browserArguments,
    hasTouch: true,
    viewport: { width: 1280, height: 800 },
  });
  const page = await context.newPage();
  page.setDefaultTimeout(120_000);
  await page.goto(site.url);
  await page.getByRole('heading', { name: 'Who is at the station?' }).waitFor();
  await fillLog(page, count);
  return {
    count,
    async round() {
      const began = performance.now();
      await page.goto(`${site.url}#/pace`);
      await page.reload();
      await page.getByRole('heading', { name: 'Who is at the station?' }).waitFor();
      const pace = performance.now() - began;
      const open = async (name, sign) => {
        const from = performance.now();
        await page.getByRole('link', { name, exact: true }).click();
        await sign.waitFor();
        return performance.now() - from;
      };
      const study = await open('Study', page.getByRole('heading', { name: 'Studies' }));
      const review = await open('Review', page.getByText(/parts done/).first());
      return { pace, study, review };
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
rmSync(dist, { recursive: true });

process.stdout.write(
  `opening, ms, median of ${ROUNDS}\nscreen    ${FEW} records   ${MANY} records   ratio\n`,
);
for (const screen of ['pace', 'study', 'review']) {
  const [a, b] = [times.few, times.many].map((list) => median(list.map((each) => each[screen])));
  process.stdout.write(
    `${screen.padEnd(8)} ${a.toFixed(0).padStart(8)} ${b.toFixed(0).padStart(16)} ${(b / a).toFixed(2).padStart(11)}\n`,
  );
}

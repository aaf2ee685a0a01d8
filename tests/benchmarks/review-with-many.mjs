// How long Review takes for a day and for a year of a four-tablet shop, beside the same with three days of records:
//   npm run bench:review [-- 1000000]
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { browserArguments, findChromium } from '../../.config/find-chromium.mjs';
import { serve } from '../../.config/serve.mjs';
import { builtApp } from './built-app.mjs';
import { median } from './figure.mjs';
import { sampleRecord } from './fill-log.mjs';

const MANY = Number(process.argv[2] ?? 1_000_000);
/** Three whole days: the day that is opened is as long as in the large log. */
const FEW = 12_000;
const ROUNDS = 7;
const TABLETS = 4;
/** Records of a turn: a tablet writes one turn a day. */
const A_TURN = 1_000;

const { dist, discard } = builtApp();
const site = await serve({ folder: dist, port: 0 });

/** Fills the log with days of four other tablets: a turn each, most of its records parts done. */
function fillShop(page, count) {
  return page.evaluate(
    async ({ total, record, tablets, aTurn }) => {
      const opening = indexedDB.open('pacewright');
      const database = await new Promise((resolve) => {
        opening.onsuccess = () => resolve(opening.result);
      });
      const first = Date.UTC(2025, 0, 6, 6);
      for (let turn = 0; turn * aTurn < total; turn += 1) {
        const device = `older-${turn % tablets}`;
        const workday = Math.floor(turn / tablets);
        const dawnMs = first + (workday + 2 * Math.floor(workday / 5)) * 86_400_000;
        const from = workday * aTurn + 1;
        const transaction = database.transaction('records', 'readwrite', { durability: 'relaxed' });
        const store = transaction.objectStore('records');
        const parts = ['S', 'M', 'L'].map((partCode) => ({
          part: `p-${partCode}`,
          partCode,
          targetMs: 30_000,
        }));
        for (let place = 0; place < aTurn; place += 1) {
          const part = parts[Math.floor(place / 40) % parts.length];
          const fact =
            place === 0
              ? { kind: 'turn-started', starts: 'turn', person: 'K7', ...part }
              : place === aTurn - 1
                ? { kind: 'turn-ended' }
                : place % 50 === 48
                  ? { kind: 'stopped' }
                  : place % 50 === 49
                    ? { kind: 'resumed' }
                    : { kind: 'part-done', ...part };
          store.add({
            ...record,
            device,
            sequence: from + place,
            stream: `${device}:${from}`,
            stamp: {
              ...record.stamp,
              run: `run-${turn}`,
              monoMs: place * 27_000 + (place % 7) * 900,
              wallMs: dawnMs + place * 27_000 + (place % 7) * 900,
            },
            fact,
          });
        }
        await new Promise((resolve, reject) => {
          transaction.oncomplete = resolve;
          transaction.onabort = () => reject(transaction.error);
        });
      }
      database.close();
    },
    { total: count, record: sampleRecord, tablets: TABLETS, aTurn: A_TURN },
  );
}

async function tablet(count) {
  const profile = mkdtempSync(path.join(tmpdir(), 'pacewright-bench-profile-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: findChromium(),
    args: browserArguments,
    hasTouch: true,
    viewport: { width: 1280, height: 800 },
  });
  const page = await context.newPage();
  page.setDefaultTimeout(900_000);
  await page.goto(site.url);
  await page.getByRole('link', { name: 'Review', exact: true }).waitFor();
  await fillShop(page, count);
  const openReview = () => page.getByRole('link', { name: 'Review', exact: true }).click();
  /** From a tap to what is named standing there: in the page, so that no message between two programs counts. */
  const timed = (link, sign) =>
    page.evaluate(
      ({ name, text }) =>
        new Promise((resolve) => {
          const began = performance.now();
          const look = () => {
            const isThere = document.querySelector('.shell-main')?.textContent.includes(text);
            if (isThere) resolve(performance.now() - began);
            else requestAnimationFrame(look);
          };
          [...document.querySelectorAll('a')].find((each) => each.textContent.trim() === name).click();
          look();
        }),
      { name: link, text: sign },
    );
  // The first time everything is made from the taps, and kept.
  await page.reload();
  await openReview();
  const began = performance.now();
  await page.getByRole('heading', { name: 'Parts of the day' }).waitFor();
  // The sums of the first weeks are there when there is something to save.
  await page.getByRole('heading', { name: 'Out of the tablet' }).waitFor();
  for (const longer of ['Read a quarter of a year', 'Read a year']) {
    const button = page.getByRole('button', { name: longer });
    if (await button.isVisible()) await button.click();
    await page.waitForTimeout(300);
    await page.getByText(/^Adding up days/).waitFor({ state: 'detached' });
  }
  const firstMs = performance.now() - began;
  return {
    firstMs,
    async round() {
      await page.goto(`${site.url}#/shop`);
      await page.reload();
      await page.getByRole('link', { name: 'Review', exact: true }).waitFor();
      await page.waitForTimeout(500);
      const day = await timed('Review', 'Parts of the day');
      await page.getByRole('link', { name: 'The weeks' }).click();
      await page.getByRole('heading', { name: 'What cost us most' }).waitFor();
      const year = await page.evaluate(
        () =>
          new Promise((resolve) => {
            const quarter = [...document.querySelectorAll('button')].find((each) =>
              /quarter/.test(each.textContent),
            );
            if (!quarter) return resolve(0);
            quarter.click();
            const wait = () => {
              const longer = [...document.querySelectorAll('button')].find((each) =>
                /Read a year/.test(each.textContent),
              );
              if (!longer) return requestAnimationFrame(wait);
              const began = performance.now();
              longer.click();
              const look = () => {
                const isThere = /The figures of 2\d\d days/.test(
                  document.querySelector('.shell-main').textContent,
                );
                if (isThere) resolve(performance.now() - began);
                else requestAnimationFrame(look);
              };
              look();
            };
            wait();
          }),
      );
      return { day, year };
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

const [fewDay, manyDay] = [times.few, times.many].map((list) => median(list.map(({ day }) => day)));
process.stdout.write(
  `Review, ms, median of ${ROUNDS}\n` +
    `a day     ${fewDay.toFixed(0)} with ${FEW} records, ${manyDay.toFixed(0)} with ${MANY}: ${(manyDay / fewDay).toFixed(2)} times\n` +
    `a year    ${median(times.many.map(({ year }) => year)).toFixed(0)} with ${MANY}\n` +
    `the first time, everything made from its taps: ${(many.firstMs / 1_000).toFixed(1)} s\n`,
);

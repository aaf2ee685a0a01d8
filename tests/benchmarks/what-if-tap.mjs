// How long What if keeps its answer waiting on a slow tablet: from a tap on a control to the frame that shows what
// it does, at a quarter of this machine's speed, in the built app and the demo shop.
//   npm run bench:what-if
// Judged is the time of the page's own thread, since what else runs on the machine is no matter of the app; the time on
// the wall and that of a tap that changes nothing are told beside it.
import { chromium } from 'playwright-core';
import { browserArguments, findChromium } from '../../.config/find-chromium.mjs';
import { serve } from '../../.config/serve.mjs';
import { builtApp } from './built-app.mjs';

const ROUNDS = 12;
const SLOWER = 4;
const MOST_MS = 100;
/** The rest of the days is simulated before the next tap, as at the hand of a person who reads the answer. */
const BETWEEN_MS = 900;

const controls = [
  'Machine speed: more',
  'Loading time: less',
  'People: more',
  'People: less',
  'Parts that leave together: less',
];

const quantile = (values, share) => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
};
const wait = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

const { dist, discard } = builtApp();
const site = await serve({ folder: dist, port: 0 });
const browser = await chromium.launch({ executablePath: findChromium(), args: browserArguments });
const context = await browser.newContext({ hasTouch: true, viewport: { width: 1280, height: 800 } });
const page = await context.newPage();
await page.goto(`${site.url}#/demo/cell/what-if`);
await page.getByRole('button', { name: 'Machine speed: more' }).waitFor({ timeout: 60_000 });
await wait(1_500);
const slow = await context.newCDPSession(page);
await slow.send('Performance.enable', { timeDomain: 'threadTicks' });
await slow.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });

/** From the tap to the frame after it; what is done in that frame included. */
const tapped = (name) =>
  page.evaluate(
    (label) =>
      new Promise((resolve) => {
        const button = [...document.querySelectorAll('button')].find(
          (own) => own.getAttribute('aria-label') === label || own.textContent === label,
        );
        const from = performance.now();
        button.click();
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => resolve(performance.now() - from);
          port2.postMessage(0);
        });
      }),
    name,
  );

/** Milliseconds that the page's thread has worked so far; slowed down, it works that much longer. */
const worked = async () => {
  const { metrics } = await slow.send('Performance.getMetrics');
  return 1_000 * metrics.find(({ name }) => name === 'TaskDuration').value;
};

const thread = [];
const wall = [];
const nothing = [];
for (let round = 0; round < ROUNDS; round += 1) {
  for (const name of controls) {
    const before = await worked();
    wall.push(await tapped(name));
    thread.push((await worked()) - before);
    await wait(BETWEEN_MS);
  }
  nothing.push(await tapped('What if'));
  await tapped('As it is now');
  await wait(BETWEEN_MS);
}
await browser.close();
await site.close();
discard();

const say = (what, times) =>
  process.stdout.write(
    `${what}: half within ${quantile(times, 0.5).toFixed(0)} ms, 95 % within ${quantile(times, 0.95).toFixed(0)} ms\n`,
  );
say('the page at work', thread);
say('on the wall', wall);
say('a tap that changes nothing, on the wall', nothing);
if (quantile(thread, 0.95) > MOST_MS) {
  process.stdout.write(`above ${MOST_MS} ms at ${SLOWER} × slower\n`);
  process.exitCode = 1;
}

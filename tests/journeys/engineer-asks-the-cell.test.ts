import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOnTablet } from './support/app-on-tablet';
import { saved } from './support/pace-steps';
import { landscape, portrait } from './support/tablet';
import { tap, tapButton } from './support/tap';

describe('an engineer asks what the cell should do next', () => {
  let page: Page;
  appOnTablet('#/demo/cell', (opened) => {
    page = opened;
  });

  const answer = () => page.getByRole('main').getByRole('heading', { level: 1 });
  /** What is held at the top of the page covers what lies under it: in the middle nothing does. */
  const reach = async (name: string | RegExp) => {
    const button = page.getByRole('button', { name, exact: typeof name === 'string' }).first();
    await button.evaluate((own) => own.scrollIntoView({ block: 'center' }));
    return button;
  };
  const press = async (name: string | RegExp, times = 1) => {
    const button = await reach(name);
    for (let tapped = 0; tapped < times; tapped += 1) await tap(page, button);
  };

  it('reads that it is hand work at the standing machine, and machine speed on V only', async () => {
    await answer().filter({ hasText: 'shorten hand work at the standing machine' }).waitFor();
    await page
      .locator('.cell-answer')
      .filter({ hasText: /\d good parts a day more/ })
      .waitFor();
    const said = await page.locator('.cell-answer').innerText();
    expect(said).toContain('Hand work at the standing machine pays on every part.');
    expect(said).toContain('A faster machine pays on V, less on L and T, not on S and M.');
    // Why to begin there: by the measure whose figures stand first in the list beneath, and at its head.
    const [, second, tenth] =
      /“E2 load, clamp, start” gives ([\d.]+) good parts a day more: .* instead of ([\d.]+);/.exec(said)!;
    const head = page.locator('.cell-effects tbody tr').first();
    expect(await head.innerText()).toContain('E2 load, clamp, start');
    expect((await head.getByRole('cell').allInnerTexts()).slice(0, 2)).toEqual([`+${second}`, `+${tenth}`]);
    expect(said).toContain('By share “E6 clean up edges” is ahead');
    // What a day is stands at its figure: hours, and that it holds no allowance as a standard time does.
    await page.getByRole('columnheader', { name: /good parts a day\s*[\d.]+ h, no allowances/ }).waitFor();
    // The figures that this is said of stand beside it.
    const gained = await page.getByRole('row', { name: /^V / }).getByRole('cell').allInnerTexts();
    expect(gained.slice(-3)).toEqual(['1.00', '0.00', '1.00']);
  });

  it('saw nothing jump while it was read: layout shift below 0.1, which counts as good', async () => {
    const shift = await page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          new PerformanceObserver((list) => {
            const values = list.getEntries().map((entry) => (entry as unknown as { value: number }).value);
            resolve(values.reduce((sum, value) => sum + value, 0));
          }).observe({ type: 'layout-shift', buffered: true });
          // An observer without an entry is never called.
          requestAnimationFrame(() => requestAnimationFrame(() => resolve(0)));
        }),
    );
    expect(shift).toBeLessThan(0.1);
  });

  it('opens the study that a part is reckoned from, and comes back', async () => {
    await tapButton(page, 'M');
    const link = page.getByRole('link', { name: 'From study “M, one piece, K7”' });
    await link.scrollIntoViewIfNeeded();
    await tap(page, link);
    await page.getByText('Time observation sheet').first().waitFor();
    await page.goBack();
    await answer().filter({ hasText: 'Next:' }).waitFor();
  });

  it('taps on the same spot again and again, and nothing has moved away under the finger', async () => {
    await tapButton(page, 'What if');
    await tapButton(page, 'M');
    const more = page.getByRole('button', { name: 'Machine speed: more', exact: true });
    await more.scrollIntoViewIfNeeded();
    const before = (await more.boundingBox())!;
    await tap(page, more);
    await page.getByRole('button', { name: 'Take back: Machine speed: 105 %' }).waitFor();
    expect(await more.boundingBox()).toEqual(before);
    await tap(page, more);
    await page.getByRole('button', { name: 'Take back: Machine speed: 110 %' }).waitFor();
    await tapButton(page, 'As it is now');
    expect(await more.boundingBox()).toEqual(before);
  });

  it.each([landscape, portrait])(
    'makes six changes: nothing slides, and all six can be read and taken back, at %o',
    async (size) => {
      await page.setViewportSize(size);
      const changes = [
        'Machine speed: more',
        'Passes: more',
        'Loading time: less',
        'Machines: more',
        'Time of that element: less',
        'Parts that arrive together: less',
      ];
      for (const name of changes) {
        const button = page.getByRole('button', { name, exact: true });
        await button.scrollIntoViewIfNeeded();
        const before = await button.boundingBox();
        await tap(page, button);
        await page
          .getByRole('button', { name: /^Take back: / })
          .nth(changes.indexOf(name))
          .waitFor();
        expect(await button.boundingBox()).toEqual(before);
      }
      // All in sight without a push to the side.
      const chips = page.locator('.cell-changes');
      expect(await chips.evaluate((row) => row.scrollWidth - row.clientWidth)).toBe(0);
      for (let left = changes.length; left > 0; left -= 1) await press(/^Take back: /);
      await answer().filter({ hasText: 'Change something' }).waitFor();
      await page.setViewportSize(landscape);
    },
  );

  it('tries a faster machine on M and reads why it does nothing, and on V that it does', async () => {
    await press('What if');
    await press('M');
    await press('Machine speed: more', 5);
    await answer().filter({ hasText: 'No effect on the pace, because the hands govern' }).waitFor();
    await press('V');
    await press('Machine speed: more', 5);
    await answer().filter({ hasText: 'parts a day more' }).waitFor();
    expect(await answer().innerText()).toMatch(/^0\.\d+ min less a part: \d+\.\d parts a day more\.$/);
  });

  it('finds the change again after another page, and takes it back by its own button', async () => {
    await press('Lead time');
    await press('What if');
    await press('Take back: Machine speed: 125 %');
    await answer().filter({ hasText: 'Change something' }).waitFor();
  });

  it('tries smaller lots and reads a shorter lead time', async () => {
    await tapButton(page, 'M');
    await press('Parts that arrive together: less', 15);
    expect(await page.locator('.cell-held').innerText()).toMatch(
      /A part is in the cell for \d+\.\d min instead/,
    );
  });

  it('runs 2,500 days, sees how far it is, and can stop it', async () => {
    const run = page.getByRole('button', { name: 'Simulate 2,500 days' });
    await run.scrollIntoViewIfNeeded();
    await tap(page, run);
    await page.getByText('2,500 days simulated').waitFor();
    // The day it has reached is shown; stopped there, the figures are of what ran until then.
    await tap(page, page.getByRole('button', { name: 'Other luck' }));
    await page.getByText('60 days simulated').waitFor();
    await tap(page, run);
    await tap(page, page.getByRole('button', { name: 'Stop there' }));
    const stopped = await page.getByText(/days simulated/).innerText();
    expect(Number(stopped.split(' ')[0]!.replace(',', ''))).toBeLessThan(2_500);
  });

  it('reads the lead time of the lots, and what it consists of', async () => {
    await page.getByRole('navigation', { name: 'The cell' }).scrollIntoViewIfNeeded();
    await tapButton(page, 'Lead time');
    await answer().filter({ hasText: 'Half of the parts were free within 28 min' }).waitFor();
    await page.getByText(/waiting for the parts of its own lot: smaller lots, not a quicker cell/).waitFor();
  });

  it('reads how many people the parts wanted take, and keeps another number that is typed', async () => {
    await page.getByRole('navigation', { name: 'The cell' }).scrollIntoViewIfNeeded();
    await tapButton(page, 'People and machines');
    await answer().filter({ hasText: 'with 1 person' }).waitFor();
    await page.getByLabel('Parts wanted a day').fill('400');
    await page.keyboard.press('Enter');
    await answer().filter({ hasText: '400 are wanted' }).waitFor();
  });
});

describe('lots at an own cell', () => {
  let page: Page;
  const { site } = appOnTablet('#/cell/lead-time', (opened) => {
    page = opened;
  });

  it('arrive with one tap and leave with one, and are there again after a reload', async () => {
    await tapButton(page, /arrived$/);
    await page.getByText('In the cell now: 1 part in one lot').waitFor();
    await tapButton(page, '1 part free for the next operation');
    await page.getByText('Recorded: 1 part free.').waitFor();
    await page.getByRole('heading', { name: /^1 part so far/ }).waitFor();
    // Nothing is inside now: the tap is acknowledged all the same.
    await tapButton(page, '1 part free for the next operation');
    await page.getByText('Nobody saw 1 of them arrive').waitFor();
    await saved(page);
    await tap(page, page.getByText('Other lots: sizes, numbers, a scan'));
    await page.getByLabel('Lot number, typed or scanned, then Enter').fill('R-7');
    await page.keyboard.press('Enter');
    await page.getByRole('rowheader', { name: 'R-7' }).waitFor();
    await saved(page);
    await page.reload();
    await page.getByRole('rowheader', { name: 'R-7' }).waitFor();
  });

  it('have a sentence in place of a chart while no study tells of any part', async () => {
    await page.goto(`${site.url}#/cell`);
    await page.getByRole('heading', { name: 'The cell is reckoned from a study of the work' }).waitFor();
  });
});

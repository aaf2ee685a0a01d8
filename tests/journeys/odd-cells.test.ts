import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { appOnTablet } from './support/app-on-tablet';
import { tap } from './support/tap';

type Element = readonly [name: string, seconds: number, work: 'manual' | 'machine', placement: string];

/** Eight cycles, in half of which the first element takes longer and the others do not. */
function studyOf(part: string, elements: readonly Element[]): string[] {
  return Array.from({ length: 8 }, (_, cycle) =>
    elements.map(([name, seconds, work, placement], place) => {
      const observed = seconds * (place === 0 && cycle % 2 ? 1.6 : 1);
      return [`Study of ${part}`, cycle + 1, name, observed.toFixed(3), work, placement, part].join(',');
    }),
  ).flat();
}

const table = [
  'study,cycle,element,observed_s,work,placement,part',
  // No machine, and an element of no time.
  ...studyOf('HAND', [
    ['Pick', 6, 'manual', 'external'],
    ['Look', 0, 'manual', 'external'],
    ['Place', 9, 'manual', 'external'],
  ]),
  // A machine that is always waited for, beside hand work that is longer than any takt below.
  ...studyOf('BORED', [
    ['Load', 5, 'manual', 'external'],
    ['Deburr', 40, 'manual', 'internal'],
    ['Bore', 30, 'machine', 'external'],
  ]),
  // A cycle that takes no time at all.
  ...studyOf('NOTHING', [['Touch', 0, 'manual', 'external']]),
].join('\n');

describe('a cell of odd studies', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'pacewright-odd-'));
  const thrown: string[] = [];
  let page: Page;
  const { site } = appOnTablet('#/records', (opened) => {
    page = opened;
    page.on('pageerror', (error) => thrown.push(error.message));
  });

  beforeAll(async () => {
    const file = path.join(folder, 'odd.csv');
    writeFileSync(file, table);
    await page.getByLabel('Choose a table …').setInputFiles(file);
    await page.waitForURL(/#\/study/);
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  const main = () => page.getByRole('main');
  const answer = () => main().getByRole('heading', { level: 1 });
  const press = async (name: string | RegExp, times = 1) => {
    const button = page.getByRole('button', { name, exact: typeof name === 'string' }).first();
    await button.evaluate((own) => own.scrollIntoView({ block: 'center' }));
    for (let tapped = 0; tapped < times; tapped += 1) await tap(page, button);
  };
  const open = async (tab: string, part: string) => {
    await press(tab);
    await press(part);
  };
  const figure = (row: string) => page.getByRole('row', { name: row }).getByRole('cell').first().innerText();

  it('leaves out the one that takes no time, says so, and answers for the others', async () => {
    await page.goto(`${site.url}#/cell`);
    await page.getByText('Study of NOTHING is left out: its cycle is shorter than a second.').waitFor();
    // Half of the parts have no machine: none that stands is spoken of, and what is made of each is said.
    await answer().filter({ hasText: 'Next: shorten hand work, beginning with “Place”.' }).waitFor();
    const said = await main().innerText();
    expect(said).toContain(
      'Hand work pays on every part. Hand work beside the running machine pays on BORED.',
    );
    expect(said).toContain('As many are taken of each part');
    expect(await page.getByRole('row', { name: /^HAND / }).innerText()).toContain('hands');
  });

  it('shows an element of no time as one that gives nothing', async () => {
    await press('HAND');
    const gains = await page
      .getByRole('row', { name: /^Look / })
      .getByRole('cell')
      .allInnerTexts();
    expect(gains.slice(0, 2).every((gain) => !/[1-9]/.test(gain))).toBe(true);
  });

  it('has no machine where there is none: nothing of its speed is asked, and nobody waits for it', async () => {
    await open('What if', 'HAND');
    await page.getByRole('button', { name: 'People: more', exact: true }).waitFor();
    expect(await page.getByRole('button', { name: 'Machine speed: more' }).count()).toBe(0);
    expect(await main().innerText()).not.toMatch(/\bmachine\b|NaN|Infinity|undefined/);
  });

  it('with no place before the other person gives fewer parts, and says why', async () => {
    const then = async () => {
      const row = page.getByRole('row', { name: /^Good parts a day .*no allowances/ }).getByRole('cell');
      return Number((await row.nth(1).innerText()).replace(',', ''));
    };
    await press('People: more');
    await answer()
      .filter({ hasText: /parts a day more\.$/ })
      .waitFor();
    const withPlace = await then();
    await press('Places before the other person: less');
    await expect.poll(then).toBeLessThan(0.99 * withPlace);
    await press('As it is now');
  });

  it('with lots and trolleys of one is a flow: a part is inside for its own way alone', async () => {
    await press('Parts that arrive together: less', 20);
    await press('Parts that leave together: less', 10);
    await answer().waitFor();
    expect(await page.getByRole('button', { name: 'Parts left when they arrive: more' }).isDisabled()).toBe(
      true,
    );
    expect(await figure('Parts inside')).not.toMatch(/NaN|Infinity/);
    await press('Lead time');
    await press('Parts of the lot: less', 20);
    await page.getByRole('heading', { name: /^A lot of 1 part takes / }).waitFor();
    expect(await main().innerText()).not.toMatch(/NaN|Infinity|undefined/);
  });

  const want = async (parts: string) => {
    await page.getByLabel('Parts wanted a day').fill(parts);
    await page.keyboard.press('Enter');
    await answer().filter({ hasText: 'are wanted' }).waitFor();
  };

  it('with a takt shorter than its longest element is told that no number of people would do', async () => {
    await open('People and machines', 'HAND');
    await want('4000');
    await page.getByText(/No number of people would do: Pick and Place each take longer/).waitFor();
    await want('99999999');
    await page
      .getByText(/would do/)
      .first()
      .waitFor();
    expect(await main().innerText()).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('with elements that wait for each other in a circle is told so, also where people are enough', async () => {
    for (const wanted of ['4000', '10']) {
      await want(wanted);
      await page
        .getByText('What must come after what')
        .evaluate((own) => own.closest('details')!.setAttribute('open', ''));
      await page.getByLabel('Pick after').selectOption('Place');
      await page.getByLabel('Place after').selectOption('Pick');
      await page.getByText(/wait for each other in a circle/).waitFor();
      await page.getByLabel('Pick after').selectOption('');
      await page.getByText(/wait for each other in a circle/).waitFor({ state: 'detached' });
    }
  });

  it('threw nothing on the way', () => expect(thrown).toEqual([]));
});

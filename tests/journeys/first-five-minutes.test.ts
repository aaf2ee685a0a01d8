import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { changeWords } from '../../src/i18n/en/changes';
import { appOnTablet } from './support/app-on-tablet';
import { violations } from './support/axe';
import { cut } from './support/language-faults';
import { beginFirstTurn, partDone } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { Site } from './support/site';
import { landscape, portrait, Tablet } from './support/tablet';
import { tap, tapButton } from './support/tap';

const { version } = changeWords.releases[0]!;

/** Beginnings of what goes before any time, as it stands in each language. */
const cautions = {
  en: [/no safety device/, /lock it out/, /rest, water or the toilet/, /agreed for them/, /Local rules/],
  de: [
    /keine Schutzeinrichtung/,
    /gegen Wiedereinschalten sichern/,
    /Erholung, Wasser oder Toilette/,
    /eigens vereinbarte Zielzeit/,
    /Örtliche Regeln/,
  ],
  es: [
    /no es un dispositivo de seguridad/,
    /bloquearla/,
    /al descanso, al agua o al baño/,
    /se acuerde para su caso/,
    /normas y acuerdos locales/,
  ],
};

async function isInView(page: Page, text: RegExp): Promise<boolean> {
  const box = await page.getByText(text).first().boundingBox();
  const start = await page.locator('.pace-start').boundingBox();
  return box !== null && start !== null && box.y + box.height <= start.y;
}

describe('the first five minutes', () => {
  let page: Page;
  appOnTablet('', (opened) => {
    page = opened;
  });

  it('begin with what goes before any time, the way to install and the demo shop in view', async () => {
    for (const viewport of [portrait, landscape]) {
      await page.setViewportSize(viewport);
      await page.getByText('Install it on this tablet').waitFor();
      for (const text of [...cautions.en.slice(0, 3), /Only looking/, /Install it on this tablet/]) {
        expect(await isInView(page, text)).toBe(true);
      }
    }
  });

  it('say why and how to install it, when somebody asks', async () => {
    await tap(page, page.getByText('Install it on this tablet'));
    await page.getByText(/opens like an app/).waitFor();
    // As this browser pleases: its own offer, or the line in its menu.
    const way = page.getByText(/“Install app”/).or(page.getByRole('button', { name: 'Install' }));
    await way.first().waitFor();
    expect(await violations(page)).toEqual([]);
  });

  it('install it with one tap where the browser offers that', async () => {
    await page.evaluate(() => {
      const offer = new Event('beforeinstallprompt', { cancelable: true });
      dispatchEvent(Object.assign(offer, { prompt: async () => ({ outcome: 'accepted' }) }));
    });
    await tapButton(page, 'Tablet');
    const install = page.locator('.tablet-sheet').getByRole('button', { name: 'Install' });
    await install.scrollIntoViewIfNeeded();
    await tap(page, install);
    await install.waitFor({ state: 'detached' });
    await tapButton(page, 'Tablet');
  });

  it('lead to the first timed part with five taps and two words', async () => {
    await page.reload();
    await beginFirstTurn(page, 'K7', 'M', '');
    await partDone(page);
    await page.getByText(/Previous part/).waitFor();
    expect((await readOwnLog(page)).filter(({ fact }) => fact.kind === 'part-done')).toHaveLength(1);
  });
});

describe('a stranger in the demo shop', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let page: Page;
  const guide = () => page.getByRole('navigation', { name: 'Three people, three questions' });

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
    await page.goto(site.url);
    await tapButton(page, 'Open the demo shop');
    await guide().waitFor();
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  it.each([
    ['How long should this take?', 'Engineer', /open a study/, 'Studies'],
    ['What governs the cell', 'Engineer', /choose M: the hands govern/, 'Next: shorten hand work'],
    ['How did the day go', 'Foreman', /283 parts/, 'Efficiency'],
  ])(
    'is led by “%s” to where it is answered, and told what to look at',
    async (question, who, look, answer) => {
      const link = guide().getByRole('link', { name: question });
      expect(await link.innerText()).toContain(who);
      await tap(page, link);
      await page.getByRole('main').getByRole('heading', { name: answer }).first().waitFor();
      await guide().getByText(look).waitFor();
      expect(await violations(page)).toEqual([]);
      for (const viewport of [portrait, landscape]) {
        await page.setViewportSize(viewport);
        expect(await cut(page)).toEqual([]);
      }
    },
  );

  it('finds what it says of Friday and Tuesday on Review itself', async () => {
    await page.getByText(/282 good/).waitFor();
    await page.goto('about:blank');
    await page.goto(`${site.url}#/demo/review/2026-03-24`);
    await page.getByText(/230 good/).waitFor();
  });

  it('has the surface to itself while a part is timed, and the questions again after the turn', async () => {
    await tap(page, guide().getByRole('link', { name: 'Am I inside' }));
    await tapButton(page, /^K7/);
    await tapButton(page, /^M\b/);
    await tapButton(page, /^Start/);
    await page.getByRole('button', { name: /^Part done/ }).waitFor();
    expect(await guide().count()).toBe(0);
    await tapButton(page, /^End turn/);
    await tapButton(page, 'End the turn');
    await guide().waitFor();
  });

  it('puts it away for good, and finds it again on the tablet’s own sheet', async () => {
    await tapButton(page, 'Put away');
    expect(await guide().count()).toBe(0);
    await page.reload();
    await page.getByText('Demo shop: invented records').waitFor();
    expect(await guide().count()).toBe(0);
    // From a screen that answers none of them, it leads to one that does.
    await tap(page, page.getByRole('link', { name: 'Shop', exact: true }));
    await tapButton(page, 'Tablet');
    const again = page.getByRole('button', { name: 'The three questions' });
    await again.scrollIntoViewIfNeeded();
    await tap(page, again);
    await guide().waitFor();
  });

  it('prints no study and no standard without what goes before any time, in any language', async () => {
    for (const [language, texts] of Object.entries(cautions)) {
      await tap(page, page.locator('.shell-tablet'));
      const choice = page.locator(`.tablet-sheet button[lang^="${language}"]`);
      await choice.scrollIntoViewIfNeeded();
      if ((await choice.getAttribute('aria-pressed')) !== 'true') {
        await Promise.all([page.waitForEvent('load'), tap(page, choice)]);
      } else await tap(page, page.locator('.shell-tablet'));
      for (const kind of ['study/study-', 'study/standard-of']) {
        await page.goto('about:blank');
        await page.goto(`${site.url}#/demo/study`);
        await page.getByRole('main').locator('a').first().waitFor();
        const addresses = await page
          .getByRole('main')
          .locator('a')
          .evaluateAll((links) => links.map((link) => link.getAttribute('href')!));
        const address = addresses.find((each) => each.includes('standard') === kind.includes('standard'))!;
        await page.evaluate((hash) => {
          location.hash = hash;
        }, address);
        await page.locator('.study-paper-foot').waitFor({ state: 'attached' });
        await page.emulateMedia({ media: 'print' });
        const paper = await page.locator('.study-paper').innerText();
        for (const text of texts) expect(paper, `${language}, ${kind}`).toMatch(text);
        await page.emulateMedia({ media: 'screen' });
      }
    }
  });
});

describe('a tablet that has taken a newer release', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let page: Page;
  const updated = () => page.getByText('Pacewright was updated.');

  beforeAll(async () => {
    await site.start();
    page = await tablet.start();
    await page.goto(site.url);
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  it('says nothing of it at its first', async () => {
    await page.waitForFunction(() => localStorage.getItem('pacewright-app-release-seen') === 'first');
    await page.reload();
    await page.waitForTimeout(1_500);
    expect(await updated().count()).toBe(0);
  });

  it('tells once what changed, never while a part is timed', async () => {
    await page.evaluate(() => localStorage.setItem('pacewright-app-release-seen', 'the one before'));
    await beginFirstTurn(page, 'K7', 'M', '1:30');
    await page.reload();
    await page.getByRole('button', { name: /^Part done/ }).waitFor();
    await page.waitForTimeout(1_500);
    expect(await updated().count()).toBe(0);
    await tapButton(page, /^End turn/);
    await tapButton(page, 'End the turn');
    await updated().waitFor();
    await tapButton(page, 'What changed');
    await page.getByRole('heading', { name: `Release ${version}` }).waitFor();
    expect(await violations(page)).toEqual([]);
    await tapButton(page, 'Close');
    expect(await updated().count()).toBe(0);
    await page.reload();
    await page.waitForTimeout(1_500);
    expect(await updated().count()).toBe(0);
  });

  it('tells it at any time on its own sheet', async () => {
    await tapButton(page, 'Tablet');
    const changed = page.locator('.tablet-sheet').getByRole('button', { name: 'What changed' });
    await changed.scrollIntoViewIfNeeded();
    await tap(page, changed);
    await page.getByRole('heading', { name: `Release ${version}` }).waitFor();
    expect(await violations(page)).toEqual([]);
  });
});

import type { Page } from 'playwright-core';
import { saved } from './pace-steps';

/** Called in every state that a walk comes to, with a name for it. */
export type Look = (state: string) => Promise<void>;

const demoPlaces = [
  'study',
  'study/new',
  'study/standard-data',
  'study/paper',
  'review',
  'review/weeks',
  'review/before-after',
  'review/promises',
  'shop',
  'records',
  'records/tablet',
];

const press = (page: Page, name: string | RegExp) =>
  page
    .getByRole('button', { name, exact: typeof name === 'string' })
    .first()
    .click();

/** The screen at this address, on a page of its own: between two shops the app would load itself again. */
export async function openAt(page: Page, url: string, hash: string): Promise<void> {
  await page.goto('about:blank');
  await page.goto(`${url}#/${hash}`);
  await page.locator('main > *').first().waitFor();
  await page.waitForTimeout(700);
}

/** What lies behind titles is part of a screen too. */
async function unfold(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const more of document.querySelectorAll('details')) more.open = true;
  });
  await page.waitForTimeout(200);
}

/** Pace in a shop of one's own: set-up, running, stopped, each question, the tablet's sheet, the end, the record. */
export async function walkPace(page: Page, url: string, look: Look): Promise<void> {
  await openAt(page, url, 'pace');
  await look('pace, empty');
  await page.getByLabel('Part code').fill('M');
  await page.getByLabel(/^Target time for one part/).fill('soon');
  await look('pace, empty, with a fault');
  await page.getByLabel('Code', { exact: true }).fill('K7');
  await press(page, 'Add code');
  await page.getByLabel(/^Target time for one part/).fill('0:02');
  await press(page, 'Add part');
  await press(page, /^Start/);
  await page.getByRole('button', { name: /^Part done/ }).waitFor();
  await look('pace, running');
  for (let part = 0; part < 6; part += 1) {
    await page.waitForTimeout(1_600);
    await press(page, /^Part done/);
  }
  await page.locator('.pace-outlook').waitFor();
  await look('pace, with an outlook');
  for (const [name, panel] of [
    ['Previous part', 'outcome'],
    ['Change part', 'change'],
    ['End turn', 'end'],
  ] as const) {
    await press(page, new RegExp(`^${name}`));
    await page.waitForTimeout(200);
    await look(`pace, question: ${panel}`);
    await page.keyboard.press('Escape');
  }
  await page.locator('.pace-outlook').click();
  await page.waitForTimeout(200);
  await look('pace, question: plan');
  await page.keyboard.press('Escape');
  await press(page, 'Stop');
  await look('pace, stopped, with reasons');
  await page.waitForTimeout(1_600);
  await press(page, /^Go on/);
  await look('pace, asks about a stoppage');
  await press(page, /say why$/);
  await page.waitForTimeout(200);
  await look('pace, question: reason');
  await page.keyboard.press('Escape');
  for (const outcome of ['Rework later', 'Scrap']) {
    await page.waitForTimeout(1_600);
    await press(page, /^Part done/);
    await press(page, /^Previous part/);
    await press(page, outcome);
  }
  await look('pace, scrap and rework counted');
  await press(page, /^Previous part/);
  await page.waitForTimeout(200);
  await look('pace, question: outcome, with a part that waits');
  await press(page, /^Rework M of/);
  await page.waitForTimeout(200);
  await look('pace, rework');
  await press(page, /^Rework done/);
  await page.waitForTimeout(1_600);
  await press(page, /^Part done/);
  await press(page, /^Part done/);
  await look('pace, tapped twice');
  await press(page, 'Tablet');
  await page.locator('.tablet-sheet').waitFor();
  await look('the sheet of the tablet');
  await press(page, 'Tablet');
  await press(page, /^End turn/);
  await press(page, 'End the turn');
  await page.getByRole('heading', { name: 'Your own record' }).waitFor();
  await saved(page);
  await unfold(page);
  await look('pace, own record');
  for (const place of ['study', 'cell', 'review', 'shop', 'records']) {
    await openAt(page, url, place);
    await unfold(page);
    await look(`${place}, with one turn`);
  }
  await openAt(page, url, 'pace');
  await press(page, /^K7/);
  await press(page, /^M/);
  await look('pace, set-up that is ready');
  await press(page, /^Start/);
  await page.getByRole('button', { name: /^Part done/ }).waitFor();
  await saved(page);
  await page.addInitScript(() => {
    const now = Date.now;
    Date.now = () => now() + 30 * 3_600_000;
  });
  await openAt(page, url, 'pace');
  await page.locator('.pace-left').waitFor();
  await look('pace, left open since yesterday');
}

/** A shop with twenty days of records: every place with all unfolded, and its forms. */
export async function walkDemo(page: Page, url: string, look: Look): Promise<void> {
  await openAt(page, url, 'demo/pace');
  await look('demo pace, set-up');
  for (const place of demoPlaces) {
    await openAt(page, url, `demo/${place}`);
    if (place.startsWith('review')) await page.locator('main h2, main h1').nth(1).waitFor();
    await unfold(page);
    await look(`demo ${place}`);
  }
  await openAt(page, url, 'demo/review');
  await page.locator('.settle-right button').first().waitFor();
  for (const form of ['Parts', 'Person', 'A stop or a stretch of time', 'Enter a turn', 'It cost less']) {
    await unfold(page);
    await press(page, form);
    await page.waitForTimeout(200);
    await look(`demo review, form: ${form}`);
  }
  await page.locator('.sheet button').first().click();
  await page.waitForTimeout(200);
  await look('demo review, a working');
  await openAt(page, url, 'demo/shop');
  for (const form of [/^Change shift/, 'Add a day', 'Set the PIN']) await press(page, form);
  await page.waitForTimeout(150);
  await look('demo shop, its forms');
  await press(page, 'Change part M');
  await page.getByLabel('Target for one part').fill('soon');
  await press(page, 'Every element');
  await look('demo shop, a part with a fault');
  await page.getByLabel('Target for one part').fill('1:31');
  await press(page, 'Save');
  await openAt(page, url, 'demo/pace');
  await press(page, /^K7/);
  await press(page, /^M\b.*WD-1310/);
  await press(page, /^Start/);
  await page.locator('.pace-main').waitFor();
  await page.waitForTimeout(300);
  await page.locator('.pace-main').click();
  await page.waitForTimeout(300);
  await look('demo pace, elements are tapped');
}

/** The four pages of the cell, and What if after several changes. */
export async function walkCell(page: Page, url: string, look: Look): Promise<void> {
  await openAt(page, url, 'demo/cell');
  for (const tab of ['What governs', 'What if', 'Lead time', 'People and machines']) {
    await press(page, tab);
    await page.waitForTimeout(900);
    await unfold(page);
    await look(`demo cell, ${tab}`);
  }
  await press(page, 'What if');
  await press(page, 'V');
  // As many as fill more than one line.
  for (const control of [
    'Machine speed',
    'Passes',
    'Loading time',
    'Machines',
    'Time of that element',
    'People',
  ]) {
    await press(page, `${control}: more`);
  }
  await page.waitForTimeout(900);
  await unfold(page);
  await look('demo cell, changes that are tried');
}

/** A study from its sheet with workings to the watch in one and two lanes, and its end. */
export async function walkStudy(page: Page, url: string, look: Look): Promise<void> {
  await openAt(page, url, 'demo/study');
  await page.getByRole('main').getByRole('link').first().click();
  await page.getByRole('heading', { name: 'Study summary sheet' }).waitFor();
  await unfold(page);
  await look('demo study, sheet');
  for (const figure of await page.locator('main .study-figure, main .sheet button').all()) {
    if (await figure.isVisible()) {
      await figure.click();
      break;
    }
  }
  await page.waitForTimeout(200);
  await look('demo study, a working');
  await openAt(page, url, 'demo/study');
  await page
    .getByRole('link', { name: /^Standard of/ })
    .first()
    .click();
  await page.getByRole('heading', { name: 'Analysis of studies' }).waitFor();
  await unfold(page);
  await look('demo study, standard');
  await openAt(page, url, 'demo/study/paper');
  await press(page, 'Begin typing');
  await page.waitForTimeout(200);
  await look('demo study, typing a paper study');
  await openAt(page, url, 'demo/study/new');
  await press(page, /^M WD-1310/);
  await page.waitForTimeout(300);
  await unfold(page);
  await look('demo study, preparing');
  await press(page, 'To the watch');
  await page.waitForTimeout(200);
  await look('demo study, preparing, with faults');
  for (const lanes of ['one after the other', 'operator and machine at once']) {
    await openAt(page, url, 'demo/study/new');
    await press(page, /^M WD-1310/);
    await watch(page, look, lanes);
  }
}

async function watch(page: Page, look: Look, lanes: string): Promise<void> {
  await page.getByLabel('Operator code').fill('K7');
  await page.getByLabel('Observer').fill('E1');
  await press(page, lanes);
  await press(page, 'improve the method');
  await page.getByLabel('The person knows that this is recorded, and why').check();
  await press(page, 'To the watch');
  await page.locator('.study-surface').first().waitFor();
  await look(`demo study, before the first tap, ${lanes}`);
  await page.locator('.study-surface').first().click();
  await page.waitForTimeout(1_300);
  await page.locator('.study-surface').first().click();
  await page.waitForTimeout(300);
  await look(`demo study, watch, ${lanes}`);
  await press(page, /^Remark/);
  await look(`demo study, remark, ${lanes}`);
  await press(page, 'Close');
  await press(page, /^Foreign/);
  await page.waitForTimeout(200);
  await look(`demo study, foreign, ${lanes}`);
  await press(page, 'talk');
  await page.waitForTimeout(600);
  await page.locator('.study-surface').first().click();
  await press(page, 'End study');
  await page.waitForTimeout(200);
  await look(`demo study, its end, ${lanes}`);
  await press(page, 'End it now');
  await page.getByRole('heading', { name: 'Study summary sheet' }).waitFor();
  await look(`demo study, a short sheet, ${lanes}`);
}

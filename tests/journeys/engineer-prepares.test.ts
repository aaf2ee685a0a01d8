import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOnTablet } from './support/app-on-tablet';
import { downloadedText } from './support/download';
import { tap } from './support/tap';

describe('an engineer who prepares a study', () => {
  let page: Page;
  const { site } = appOnTablet('#/shop', (opened) => {
    page = opened;
  });
  const reach = async (name: string | RegExp) => {
    const button = page.getByRole('button', { name, exact: typeof name === 'string' }).first();
    await button.scrollIntoViewIfNeeded();
    await tap(page, button);
  };

  const reads = (label: string, value: string) =>
    expect.poll(() => page.getByLabel(label).inputValue()).toBe(value);

  it('comes from the part in Shop to where its method is written, and reads it there afterwards', async () => {
    await reach('Add a part');
    await page.getByLabel('Code on the drawing').fill('M');
    await reach('Save');
    await reach('Change part M');
    await page.getByText('It has no method yet.').waitFor();
    await reach('Prepare a study of this part');
    await reach('Add an element');
    await page.getByLabel('Element', { exact: true }).fill('Load');
    await reach('Done');
    await reach('Keep as revision 1');
    await page.getByText('Revision 1', { exact: true }).waitFor();
    await page.goto(`${site.url}#/shop`);
    await page.getByText('Its method, revision 1: Load.').waitFor();
  });

  it('puts the preparation away only after reading what goes with it; the method stays', async () => {
    await reach('Prepare a study of this part');
    await page.getByLabel('Operator code').fill('K7');
    await reach('Put this preparation away');
    await page.getByText('methods kept as a revision stay').waitFor();
    await reach('Go on');
    expect(await page.getByLabel('Operator code').inputValue()).toBe('K7');
    await reach('Put this preparation away');
    await reach('Put this preparation away');
    await reach('New study');
    await reach(/^M/);
    expect(await page.getByLabel('Operator code').inputValue()).toBe('');
    await page.getByText('Load').first().waitFor();
  });

  it('finds the size of a part again after another part, with the method and on paper', async () => {
    await reach('Change Load');
    await page.getByLabel('Grows with, if with anything').fill('perimeter, m');
    await reach('Done');
    await page.getByLabel('Size of this part: perimeter, m').fill('0.5');
    // Nothing is kept as a revision yet: neither the size nor what was changed in the method goes with the next part.
    await reach('Another part');
    await page.getByLabel('Code of the part').fill('L');
    await reach('Add this part');
    expect(await page.getByLabel('Size of this part: perimeter, m').count()).toBe(0);
    await reach(/^M/);
    await page.getByText('grows with perimeter, m').waitFor();
    await reads('Size of this part: perimeter, m', '0.5');
    await reach('Keep as revision 1');
    await page.getByText('Revision 1', { exact: true }).waitFor();
    await page.goto(`${site.url}#/study/paper`);
    await reach('M');
    await reads('Size of this part: perimeter, m', '0.5');
  });

  it('comes back from writing a method to the paper sheet it was missing for, and begins with another part’s', async () => {
    await reach('Write a method');
    await reach(/^L/);
    const from = page.getByRole('group', { name: 'Begin with the method of' });
    await tap(page, from.getByRole('button', { name: 'M', exact: true }));
    await page.getByText('grows with perimeter, m').waitFor();
    await page.getByLabel('Size of this part: perimeter, m').fill('0.9');
    await reach('Keep as revision 1');
    await page.getByText('Revision 1', { exact: true }).waitFor();
    await reach('Type in a paper study');
    await page.getByLabel('Name of the study').waitFor();
    await reach('L');
    await reads('Size of this part: perimeter, m', '0.9');
    await reach('M');
    await reads('Size of this part: perimeter, m', '0.5');
  });

  it('does not begin a paper sheet of a part that has no size, and reads in its table the one given', async () => {
    await page.getByLabel('Name of the study').fill('Sized');
    await page.getByLabel('Day', { exact: true }).fill('2026-03-02');
    await page.getByLabel('Size of this part: perimeter, m').fill('');
    await reach('Begin typing');
    await page.getByText('An element grows with the size of the part').waitFor();
    await page.getByLabel('Size of this part: perimeter, m').fill('0.75');
    await reach('Begin typing');
    await reach('7');
    await reach(/^Next/);
    await reach('Keep this study');
    await reach('Keep it as it is');
    const save = page.getByRole('button', { name: 'Save the readings as a table (CSV)' });
    const text = await downloadedText(page, save);
    const [head, first] = text.split('\r\n').map((line) => line.split(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/));
    expect(first![head!.indexOf('"perimeter, m"')]).toBe('0.75');
  });
});

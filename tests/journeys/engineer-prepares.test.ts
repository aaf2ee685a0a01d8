import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOnTablet } from './support/app-on-tablet';
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
});

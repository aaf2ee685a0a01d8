import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Page } from 'playwright-core';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** WCAG 2.2 AA, as far as axe can tell: each violation with where it is. */
export function violations(page: Page): Promise<string[]> {
  return run(page, { type: 'tag', values: tags });
}

/** The same of colours alone: what another light can do to a screen that has no other fault. */
export function contrastViolations(page: Page): Promise<string[]> {
  return run(page, { type: 'rule', values: ['color-contrast', 'link-in-text-block'] });
}

async function run(page: Page, runOnly: axe.RunOnly): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axeSource);
  return page.evaluate(async (rules) => {
    const { axe: checker } = window as typeof window & { axe: typeof axe };
    const { violations: found } = await checker.run(document, {
      runOnly: rules,
      resultTypes: ['violations'],
    });
    return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
  }, runOnly);
}

import type { Page } from 'playwright-core';

/** What can be touched and is not to be had, however one scrolls: something lies over its middle, or its words are cut. */
export function lost(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    const back = scrollY;
    // While something lies over the page on purpose, only that is to be had.
    const root = document.querySelector('dialog[open]') ?? document;
    const all = root.querySelectorAll<HTMLElement>('button, a[href], input, select, summary');
    for (const each of all) {
      if (!each.checkVisibility({ visibilityProperty: true })) continue;
      each.scrollIntoView({ block: 'center', inline: 'center' });
      const { left, top, width, height } = each.getBoundingClientRect();
      const there = document.elementFromPoint(left + width / 2, top + height / 2);
      const name = `${each.className || each.tagName}: ${each.textContent?.trim().slice(0, 40)}`;
      if (
        !there ||
        !(each.contains(there) || there.contains(each) || each.closest('label')?.contains(there))
      ) {
        found.push(`covered by ${there?.className ?? 'nothing'}: ${name}`);
      } else if (each.matches('button') && each.scrollHeight > each.clientHeight + 2) {
        found.push(`cut below: ${name}`);
      }
    }
    scrollTo(0, back);
    return found;
  });
}

import type { Page } from 'playwright-core';

/** What has the focus: its name as it is read, whether it can be seen, and whether that it has it can be seen. */
interface Focused {
  readonly name: string;
  readonly isInView: boolean;
  readonly isMarked: boolean;
}

export function focused(page: Page): Promise<Focused> {
  return page.evaluate(() => {
    const element = document.activeElement as HTMLElement;
    const field = element as HTMLInputElement;
    const name =
      element.getAttribute('aria-label') ?? field.labels?.[0]?.textContent ?? element.textContent ?? '';
    const { left, top, right, bottom } = element.getBoundingClientRect();
    const { outlineStyle, outlineWidth } = getComputedStyle(element);
    return {
      name: element === document.body ? '' : name.replace(/\s+/g, ' ').trim(),
      isInView: right > 0 && bottom > 0 && left < innerWidth && top < innerHeight,
      isMarked: outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2,
    };
  });
}

/**
 * Tab, until what has this name has the focus.
 * @throws where a stop on the way cannot be seen, or where the way does not lead there
 */
export async function tabTo(page: Page, name: RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
  const passed: string[] = [];
  for (let stop = 0; stop < 150; stop += 1) {
    await page.keyboard.press(key);
    const here = await focused(page);
    if (here.name && !(here.isInView && here.isMarked)) {
      throw new Error(`the focus is not to be seen on “${here.name}”: ${JSON.stringify(here)}`);
    }
    if (name.test(here.name)) return;
    passed.push(here.name);
  }
  throw new Error(`${name} is not reached from the keyboard; passed: ${passed.join(' | ')}`);
}

/**
 * What the Tab key leaves out of all that can have the focus, until it is where it began.
 * @throws where it is caught and never comes round
 */
export async function leftOut(page: Page): Promise<string[]> {
  const total = await page.evaluate(() => {
    const stops = [
      ...document.querySelectorAll<HTMLElement>(
        'a[href], button, input, select, textarea, summary, [tabindex]',
      ),
    ].filter(
      (each) =>
        each.tabIndex >= 0 &&
        !each.matches(':disabled') &&
        each.checkVisibility({ visibilityProperty: true }),
    );
    for (const each of stops) each.dataset.stop = 'ahead';
    (document.activeElement as HTMLElement).blur();
    getSelection()?.removeAllRanges();
    return stops.length;
  });
  for (let stop = 0; stop <= total + 2; stop += 1) {
    await page.keyboard.press('Tab');
    const isRound = await page.evaluate(() => {
      const { dataset } = document.activeElement as HTMLElement;
      const wasHere = dataset.stop === 'passed';
      dataset.stop = 'passed';
      return wasHere;
    });
    if (!isRound) continue;
    return page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('[data-stop="ahead"]')].map((each) =>
        each.outerHTML.slice(0, 90),
      ),
    );
  }
  throw new Error('the focus does not come round');
}

import type { CDPSession, Locator, Page } from 'playwright-core';

const sessions = new WeakMap<Page, Promise<CDPSession>>();

function sessionOf(page: Page): Promise<CDPSession> {
  const known = sessions.get(page) ?? page.context().newCDPSession(page);
  sessions.set(page, known);
  return known;
}

/** Longer than two frames, in which the screen follows a tap. */
const SETTLED_MS = 40;
const ATTEMPTS = 100;
/** Twice what the screen waits for a record to be saved, and a frame. */
const FOLLOWS_MS = 40;

/** One touch of a finger in the middle of what is found; it must be in view, as for a person. */
export async function tap(page: Page, target: Locator): Promise<void> {
  await target.waitFor();
  // What was found may give way to another of the same name in the next frame: no finger is as quick as that.
  let before = await target.boundingBox();
  for (let attempt = 0; attempt < ATTEMPTS; attempt += 1) {
    await page.waitForTimeout(SETTLED_MS);
    const box = await target.boundingBox();
    if (box && before && box.x === before.x && box.y === before.y) {
      await tapAt(page, box.x + box.width / 2, box.y + box.height / 2);
      // What follows is seen a moment later: once its record is saved.
      return page.waitForTimeout(FOLLOWS_MS);
    }
    before = box;
  }
  throw new Error(`nothing to tap: ${target}`);
}

export async function tapAt(page: Page, x: number, y: number): Promise<void> {
  const session = await sessionOf(page);
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

/** Taps a button by its whole name, or by the beginning of it. */
export function tapButton(page: Page, name: string | RegExp): Promise<void> {
  return tap(page, page.getByRole('button', { name, exact: typeof name === 'string' }).first());
}

import type { CDPSession, Locator, Page } from 'playwright-core';

const sessions = new WeakMap<Page, Promise<CDPSession>>();

function sessionOf(page: Page): Promise<CDPSession> {
  const known = sessions.get(page) ?? page.context().newCDPSession(page);
  sessions.set(page, known);
  return known;
}

/** One touch of a finger in the middle of what is found; it must be in view, as for a person. */
export async function tap(page: Page, target: Locator): Promise<void> {
  await target.waitFor();
  const box = await target.boundingBox();
  if (!box) throw new Error(`nothing to tap: ${target}`);
  await tapAt(page, box.x + box.width / 2, box.y + box.height / 2);
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

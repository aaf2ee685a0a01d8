import { describe, expect, it } from 'vitest';
import type { WriterLock } from '../../src/application/ports/writer-lock';
import { takeWriterLock } from '../../src/device/writer-lock';

const wait = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));
let names = 0;

/** Two tabs: the browser's locks do not tell tabs of one page from tabs of two. */
async function twoTabs(): Promise<[WriterLock, WriterLock]> {
  names += 1;
  const name = `lock-${names}`;
  return [await takeWriterLock(name), await takeWriterLock(name)];
}

describe('the lock of the one tab that writes', () => {
  it('is kept by a tab whose person asked twice for it', async () => {
    const [first, second] = await twoTabs();
    expect([first.isHeld, second.isHeld]).toEqual([true, false]);
    first.onAsked(() => wait(300));
    let taken = 0;
    second.onTaken(() => {
      taken += 1;
    });
    const asked = second.takeOver();
    await wait(100);
    const again = second.takeOver();
    await asked;
    expect(second.isHeld).toBe(true);
    await again;
    await wait(200);
    expect({ isHeld: second.isHeld, taken }).toEqual({ isHeld: true, taken: 0 });
  });

  it('is handed over by a tab that was asked while it opened once it has opened and finished, not before', async () => {
    const [first, second] = await twoTabs();
    const asked = second.takeOver();
    await wait(300);
    expect([first.isHeld, second.isHeld]).toEqual([true, false]);
    let isFinished = false;
    first.onAsked(async () => {
      await wait(50);
      isFinished = true;
    });
    await asked;
    expect(isFinished).toBe(true);
    expect([first.isHeld, second.isHeld]).toEqual([false, true]);
  });

  it('is taken from a tab that does not answer, which is told', async () => {
    const [first, second] = await twoTabs();
    first.onAsked(() => new Promise(() => {}));
    let taken = 0;
    first.onTaken(() => {
      taken += 1;
    });
    await second.takeOver();
    await wait(50);
    expect({ first: first.isHeld, second: second.isHeld, taken }).toEqual({
      first: false,
      second: true,
      taken: 1,
    });
  });
});

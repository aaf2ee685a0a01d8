import { signal } from '@preact/signals';
import { render } from 'preact';
import { useState } from 'preact/hooks';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Saving } from '../../src/application/saving-queue';
import { drawAfterSaving } from '../../src/screens/draw-after-saving';

const saved: Saving = { state: 'saved', unsaved: 0, problem: '', isInReserve: false };
const recorded: Saving = { ...saved, state: 'recorded', unsaved: 1 };
const notSaved: Saving = { ...recorded, state: 'not-saved' };
/** Within the task that is running; a signal is in the page after two of these. */
const moment = async () => {
  for (let turn = 0; turn < 3; turn += 1) await Promise.resolve();
};
const task = () => new Promise((resolve) => setTimeout(resolve));

/** A screen that counts its taps, and a mark bound to the state itself. */
function tabletPage() {
  const saving = signal(saved);
  const state = signal('saved');
  const box = document.createElement('div');
  document.body.append(box);
  let count = () => {};
  let add = () => {};
  const Screen = () => {
    const [taps, setTaps] = useState(0);
    const [others, setOthers] = useState(0);
    count = () => setTaps(taps + 1);
    add = () => setOthers(others + 1);
    return (
      <p data-state={state}>
        {taps} {others}
      </p>
    );
  };
  render(<Screen />, box);
  const set = (next: Saving) => {
    saving.value = next;
    state.value = next.state;
  };
  return {
    set,
    other: () => add(),
    shown: () => box.textContent,
    mark: () => box.querySelector('p')!.dataset.state,
    tap: (then = recorded) =>
      drawAfterSaving(saving, () => {
        set(then);
        count();
      }),
  };
}

describe('what follows from a tap', () => {
  let page: ReturnType<typeof tabletPage>;
  beforeEach(() => {
    page = tabletPage();
  });
  afterEach(async () => {
    page.set(saved);
    await new Promise((resolve) => setTimeout(resolve, 30));
    document.body.replaceChildren();
  });

  it('is drawn once its record is saved, and the mark follows before', async () => {
    page.tap();
    await task();
    expect(page.mark()).toBe('recorded');
    expect(page.shown()).toBe('0 0');
    page.set(saved);
    await moment();
    expect(page.mark()).toBe('saved');
    expect(page.shown()).toBe('0 0');
    await expect.poll(page.shown).toBe('1 0');
  });

  it('is drawn though nothing is saved, a moment later', async () => {
    page.tap();
    await expect.poll(page.shown, { interval: 5 }).toBe('1 0');
    expect(page.mark()).toBe('recorded');
  });

  it('is drawn at once where nothing was recorded, or the log refuses', async () => {
    page.tap(saved);
    await task();
    await expect.poll(page.shown).toBe('1 0');
    page.tap(notSaved);
    await expect.poll(page.shown).toBe('2 0');
  });

  it('waits together with whatever else there is to draw, which is lost no more than it', async () => {
    page.tap();
    page.other();
    await task();
    expect(page.shown()).toBe('0 0');
    page.set(saved);
    await expect.poll(page.shown).toBe('1 1');
    page.other();
    await moment();
    expect(page.shown()).toBe('1 2');
  });

  it('is drawn where the act throws, and the next tap begins anew', async () => {
    const saving = signal(saved);
    expect(() =>
      drawAfterSaving(saving, () => {
        page.other();
        throw new Error('refused');
      }),
    ).toThrow('refused');
    await expect.poll(page.shown).toBe('0 1');
    page.tap();
    page.set(saved);
    await expect.poll(page.shown).toBe('1 1');
  });
});

import type { ReadonlySignal } from '@preact/signals';
import { options } from 'preact';
import type { Saving } from '../application/saving-queue';

/** So long a tap's answer waits at most: it is still in the frame that follows the tap, or in the one after that. */
const PATIENCE_MS = 12;

/** What is to be drawn, while it waits. */
let waiting: (() => void)[] | null = null;

options.debounceRendering = (draw) => {
  if (waiting) waiting.push(draw);
  else queueMicrotask(draw);
};

/**
 * Acts, and draws what follows from it once the record is saved. The news that it is saved reaches the page on the
 * thread that draws: drawn at once, every tap would be saved later by the time its drawing takes.
 *
 * What is bound to a signal itself, as the mark that says where a tap is, follows at once.
 */
export function drawAfterSaving(saving: ReadonlySignal<Saving>, act: () => void): void {
  if (!waiting) waitUntilSaved(saving);
  act();
}

function waitUntilSaved(saving: ReadonlySignal<Saving>): void {
  waiting = [];
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = saving.subscribe(({ state }) => {
    clearTimeout(timer);
    // Saved, or nothing to save: in a task of its own, so that the mark comes first, and whatever else has waited.
    timer = setTimeout(draw, state === 'recorded' ? PATIENCE_MS : 0);
  });
  function draw() {
    stop();
    const drawn = waiting ?? [];
    waiting = null;
    for (const each of drawn) each();
  }
}

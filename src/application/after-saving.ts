import { type ReadonlySignal, signal } from '@preact/signals';
import type { Clock } from './ports/clock';
import type { Saving } from './saving-queue';

/** So long it waits at most: what follows from a tap is still in the frame after it, or in the one after that. */
const PATIENCE_MS = 12;

/** What follows from a record, and whether that had to go on without it. */
export interface AfterSaving {
  /** A record is still on its way after the longest wait: what follows from it is shown before it is saved. */
  readonly isLate: ReadonlySignal<boolean>;
  /** Must be called after the record is on its way: where none is, what follows comes in the next task. */
  call(next: () => void): void;
}

/**
 * Calls what follows from a record once it is saved. The news that it is saved reaches the page on the thread that
 * reckons and draws: done at once, all that would make every record saved later by the time it takes.
 */
export function afterSaving(saving: ReadonlySignal<Saving>, clock: Pick<Clock, 'after'>): AfterSaving {
  const waiting: (() => void)[] = [];
  const isLate = signal(false);
  let cancel: (() => void) | null = null;
  const isOnItsWay = () => saving.peek().state === 'recorded';
  const begin = () => {
    // Saved: in a task of its own, so that whoever is told of that comes first.
    cancel ??= clock.after(isOnItsWay() && !isLate.peek() ? PATIENCE_MS : 0, () => {
      cancel = null;
      isLate.value = isOnItsWay();
      // Each by itself, so that one that fails takes no other with it. All come before anything is drawn.
      for (const each of waiting.splice(0)) queueMicrotask(each);
    });
  };
  saving.subscribe(() => {
    if (!isOnItsWay()) {
      cancel?.();
      cancel = null;
      isLate.value = false;
    }
    begin();
  });
  return {
    isLate,
    call(next) {
      waiting.push(next);
      begin();
    },
  };
}

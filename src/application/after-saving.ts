import { type ReadonlySignal, signal } from '@preact/signals';
import type { Clock } from './ports/clock';
import type { Saving } from './saving-queue';

/** So long it waits at most: what follows from a tap is still in the frame after it, or in the one after that. */
const PATIENCE_MS = 12;

/**
 * Calls what follows from a record once it is saved. The news that it is saved reaches the page on the thread that
 * reckons and draws: done at once, all that would make every record saved later by the time it takes.
 */
export class AfterSaving {
  private waiting: (() => void)[] = [];
  private cancel: (() => void) | null = null;
  private readonly late = signal(false);
  /** A record is still on its way after the longest wait: what follows from it is shown before it is saved. */
  readonly isLate: ReadonlySignal<boolean> = this.late;

  constructor(
    private readonly saving: ReadonlySignal<Saving>,
    private readonly clock: Pick<Clock, 'after'>,
  ) {
    saving.subscribe(() => {
      if (!this.isOnItsWay()) {
        this.cancel?.();
        this.cancel = null;
        this.late.value = false;
      }
      this.begin();
    });
  }

  /** Must be called after the record is on its way: where none is, what follows comes in the next task. */
  call(next: () => void): void {
    this.waiting.push(next);
    this.begin();
  }

  private isOnItsWay(): boolean {
    return this.saving.peek().state === 'recorded';
  }

  private begin(): void {
    // Saved: in a task of its own, so that whoever is told of that comes first.
    const delayMs = this.isOnItsWay() && !this.late.peek() ? PATIENCE_MS : 0;
    this.cancel ??= this.clock.after(delayMs, () => {
      this.cancel = null;
      this.late.value = this.isOnItsWay();
      const { waiting } = this;
      this.waiting = [];
      // Each by itself, so that one that fails takes no other with it. All come before anything is drawn.
      for (const each of waiting) queueMicrotask(each);
    });
  }
}

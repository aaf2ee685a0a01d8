import type { Stamp } from '../../domain/records/stamp';

/** The only clock: what is shown and what is recorded both come from it. */
export interface Clock {
  now(): Stamp;
  /** The moment of an input event itself, however late its handler runs. */
  stampOf(event: { readonly timeStamp: number }): Stamp;
  /** The steps in which the monotonic clock tells time, as measured; milliseconds, 0 until they are. */
  stepMs(): number;
  /** True when the page was hidden at any time since this was last asked. */
  wasHidden(): boolean;
  /** Calls again and again, and when the page is seen again, until the returned function is called. */
  every(periodMs: number, call: () => void): () => void;
  /** Calls once, unless the returned function is called before. */
  after(delayMs: number, call: () => void): () => void;
}

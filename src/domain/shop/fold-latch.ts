import { inOrder } from '../records/in-order';
import type { LogRecord } from '../records/log-record';
import type { LatchFact } from '../records/shop-fact';
import type { Stamp } from '../records/stamp';

/**
 * The supervisor's PIN as the records tell it. A latch, not a safe: it keeps a passing hand from changing a
 * standard on this tablet. It locks no data, and whoever has a backup file has all the time to try every PIN.
 */
export interface Latch {
  /** Null when no PIN is set: then nothing is latched. */
  readonly pin: Extract<LatchFact, { kind: 'pin-set' }> | null;
  /** Wrong PINs on this tablet since the last right one. */
  readonly refusals: number;
  readonly lastRefusal: Stamp | null;
}

/** The latch from the records of the shop's stream. The PIN is the shop's, wrong ones count per tablet. */
export function foldLatch(shop: readonly LogRecord[], device: string): Latch {
  let latch: Latch = { pin: null, refusals: 0, lastRefusal: null };
  for (const { fact, stamp, device: of } of inOrder(shop)) {
    if (fact.kind === 'pin-set') latch = { pin: fact, refusals: 0, lastRefusal: null };
    else if (fact.kind === 'pin-removed') latch = { pin: null, refusals: 0, lastRefusal: null };
    else if (of !== device) continue;
    else if (fact.kind === 'pin-accepted') latch = { ...latch, refusals: 0, lastRefusal: null };
    else if (fact.kind === 'pin-refused') {
      latch = { ...latch, refusals: latch.refusals + 1, lastRefusal: stamp };
    }
  }
  return latch;
}

import { SHOP_STREAM } from '../../domain/records/log-record';
import { foldLatch } from '../../domain/shop/fold-latch';
import { latchWaitMs } from '../../domain/shop/latch-wait';
import type { Bench } from '../bench';
import type { Secrets } from '../ports/secrets';
import { bytesOf, hexadecimal } from './hexadecimal';

export type PinAnswer =
  | { readonly ok: true }
  /** `waitMs`: how long until the next one is taken. */
  | { readonly ok: false; readonly reason: 'wrong' | 'wait'; readonly waitMs: number };

/**
 * Whether this is the supervisor's PIN; any is right while none is set. Right ones and wrong ones are recorded,
 * so that reloading the page ends no wait, and anybody can see that somebody tried.
 *
 * A latch, not a safe: see `Latch`.
 */
export async function checkPin(bench: Bench, secrets: Secrets, pin: string): Promise<PinAnswer> {
  const { log, clock } = bench;
  const latch = foldLatch(await log.readStream(SHOP_STREAM), log.device);
  if (!latch.pin) return { ok: true };
  const waitMs = latchWaitMs(latch, clock.now());
  if (waitMs > 0) return { ok: false, reason: 'wait', waitMs };
  const { salt, iterations, hash } = latch.pin;
  const found = hexadecimal(await secrets.stretch(pin, bytesOf(salt), iterations));
  if (found === hash) {
    if (latch.refusals > 0) bench.record(SHOP_STREAM, [{ kind: 'pin-accepted' }]);
    return { ok: true };
  }
  const [refused] = bench.record(SHOP_STREAM, [{ kind: 'pin-refused' }]);
  const { stamp } = refused!;
  const after = { ...latch, refusals: latch.refusals + 1, lastRefusal: stamp };
  return { ok: false, reason: 'wrong', waitMs: latchWaitMs(after, stamp) };
}

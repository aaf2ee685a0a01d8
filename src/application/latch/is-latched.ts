import { SHOP_STREAM } from '../../domain/records/log-record';
import { foldLatch } from '../../domain/shop/fold-latch';
import type { Bench } from '../bench';

/** Whether a supervisor's PIN is set. */
export async function isLatched({ log }: Bench): Promise<boolean> {
  return foldLatch(await log.readStream(SHOP_STREAM), log.device).pin !== null;
}

import { type CopyAge, copyAge } from '../../domain/records/copy-age';
import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/** How old the last copy outside the browser is now, from the log. */
export async function readCopyAge({ log, clock }: Bench): Promise<CopyAge> {
  const [shop, records] = await Promise.all([log.readStream(SHOP_STREAM), log.count()]);
  return copyAge(shop, { device: log.device, records, now: clock.now() });
}

import { type CopyAge, copyAge } from '../../domain/records/copy-age';
import { isFinish } from '../../domain/records/is-finish';
import { lastCopy } from '../../domain/records/last-copy';
import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/**
 * No more are looked through, however large the log: a tap every eighteen seconds of a ten-hour day. With more than
 * that since the copy it is a day old, and due for that.
 */
const MOST_READ = 2_000;

/**
 * How old the last copy outside the browser is now, from the log.
 *
 * Must count by this tablet's own numbers what was finished since: a turn may begin before a copy and end after it, and
 * one that is entered later is stamped in the past.
 */
export async function readCopyAge({ log, clock, turn, study }: Bench): Promise<CopyAge> {
  const { device } = log;
  const [shop, records, last] = await Promise.all([
    log.readStream(SHOP_STREAM),
    log.count(),
    log.lastRecord(),
  ]);
  const copy = lastCopy(shop, device);
  const upTo = copy?.fact.upTo ?? copy?.sequence ?? 0;
  const since = Math.min(MOST_READ, (last?.sequence ?? 0) - upTo);
  const newest = since > 0 ? await log.readNewest(since) : [];
  // One that was ended, and goes on because that was taken back, is not finished.
  const inHand = [turn.peek(), study.peek()].filter((each) => each && each.status !== 'ended');
  const finished = new Set(newest.filter(isFinish).map(({ stream }) => stream));
  for (const each of inHand) finished.delete(each!.id);
  return copyAge(shop, { device, records, finished: finished.size, now: clock.now() });
}

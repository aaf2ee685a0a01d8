import { type CopyAge, copyAge } from '../../domain/records/copy-age';
import { lastCopy } from '../../domain/records/last-copy';
import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/** How old the last copy outside the browser is now, from the log. */
export async function readCopyAge({ log, clock, turn, study }: Bench): Promise<CopyAge> {
  const { device } = log;
  const [shop, records] = await Promise.all([log.readStream(SHOP_STREAM), log.count()]);
  const since = {
    fromWallMs: lastCopy(shop, device)?.stamp.wallMs ?? 0,
    toWallMs: Number.MAX_SAFE_INTEGER,
  };
  const [turns, studies] = await Promise.all([log.readStarts('turn', since), log.readStarts('study', since)]);
  const inHand = [turn.peek(), study.peek()].filter((each) => each && each.status !== 'ended').length;
  const own = [...turns, ...studies].filter((start) => start.device === device).length;
  return copyAge(shop, { device, records, finished: Math.max(0, own - inHand), now: clock.now() });
}

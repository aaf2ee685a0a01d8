import { recordKey } from '../../domain/records/record-key';
import { foldTurn } from '../../domain/turn/fold-turn';
import type { Turn } from '../../domain/turn/turn';
import type { Bench } from '../bench';

/** Enough to find an own one among those of a few tablets. */
const RECENT = 40;

/**
 * The newest turn of this tablet, as it was left; where it has none, the newest of all, and null when there has been none.
 * A copy of another tablet that was taken in does not say who comes next here.
 */
export async function lastTurn(bench: Bench): Promise<Turn | null> {
  const starts = await bench.log.readLatestStarts('turn', RECENT);
  const newest = starts.find(({ device }) => device === bench.log.device) ?? starts[0];
  return newest ? foldTurn(await bench.log.readStream(recordKey(newest))) : null;
}

import { recordKey } from '../../domain/records/record-key';
import { foldTurn } from '../../domain/turn/fold-turn';
import type { Turn } from '../../domain/turn/turn';
import type { Bench } from '../bench';

/** Enough to find an own one among those of a few tablets. */
const RECENT = 40;

/**
 * The newest turn of this tablet, as it was left; where it has none, the newest of all, and null when there has been none.
 * What was written down afterwards was left by nobody, and a copy of another tablet that was taken in does not say who
 * comes next here.
 */
export async function lastTurn(bench: Bench): Promise<Turn | null> {
  const starts = await bench.log.readLatestStarts('turn', RECENT);
  const tapped = starts.filter(({ fact }) => fact.kind === 'turn-started' && !fact.enteredLater);
  const newest = tapped.find(({ device }) => device === bench.log.device) ?? tapped[0];
  return newest ? foldTurn(await bench.log.readStream(recordKey(newest))) : null;
}

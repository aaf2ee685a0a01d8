import { recordKey } from '../../domain/records/record-key';
import { foldTurn } from '../../domain/turn/fold-turn';
import type { Turn } from '../../domain/turn/turn';
import type { Bench } from '../bench';

/** The newest turn of the shop, as it was left; null when there has been none. */
export async function lastTurn(bench: Bench): Promise<Turn | null> {
  const [newest] = await bench.log.readLatestStarts('turn', 1);
  return newest ? foldTurn(await bench.log.readStream(recordKey(newest))) : null;
}

import { type CellLots, foldLots } from '../../domain/cell/fold-lots';
import { recordKey } from '../../domain/records/record-key';
import type { Bench } from '../bench';

/** As many of the newest days of lots as are read: two weeks. */
const LOT_DAYS = 10;

/** What came to the cell and left it in the newest days. */
export async function readLots(bench: Bench): Promise<CellLots> {
  const openings = await bench.log.readLatestStarts('lots', LOT_DAYS);
  const lots = await Promise.all(openings.map((opening) => bench.log.readStream(recordKey(opening))));
  return foldLots(lots.flat());
}

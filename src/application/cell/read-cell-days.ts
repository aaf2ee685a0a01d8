import { type CellDays, cellDays } from '../../domain/cell/cell-days';
import { type CellLots, foldLots } from '../../domain/cell/fold-lots';
import { type WorkingSpan, workingSpans } from '../../domain/cell/working-time';
import { recordKey } from '../../domain/records/record-key';
import { foldTurn } from '../../domain/turn/fold-turn';
import type { Bench } from '../bench';

/** As many of the newest turns, and of the newest days of lots, as are read: about two weeks of two turns a day. */
const TURNS = 20;
const LOT_DAYS = 10;

export interface CellHistory {
  readonly days: CellDays;
  readonly working: readonly WorkingSpan[];
  readonly lots: CellLots;
}

/** The newest days of the cell: its turns, and the lots that came and went. */
export async function readCellDays(bench: Bench): Promise<CellHistory> {
  const inHand = bench.turn.value;
  const starts = await bench.log.readLatestStarts('turn', TURNS);
  const turns = await Promise.all(
    starts.map(async (start) => {
      const id = recordKey(start);
      return inHand?.id === id ? inHand : foldTurn(await bench.log.readStream(id));
    }),
  );
  const openings = await bench.log.readLatestStarts('lots', LOT_DAYS);
  const lots = await Promise.all(openings.map((opening) => bench.log.readStream(recordKey(opening))));
  return { days: cellDays(turns), working: workingSpans(turns), lots: foldLots(lots.flat()) };
}

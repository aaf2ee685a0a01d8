import { type CellDays, cellDays } from '../../domain/cell/cell-days';
import type { CellLots } from '../../domain/cell/fold-lots';
import { type WorkingSpan, workingSpans } from '../../domain/cell/working-time';
import { recordKey } from '../../domain/records/record-key';
import { foldAnyTurn } from '../../domain/turn/fold-any-turn';
import type { Bench } from '../bench';
import { readLots } from './read-lots';

/** As many of the newest turns as are read: two weeks of two turns a day. */
const TURNS = 20;

export interface CellHistory {
  readonly days: CellDays;
  readonly working: readonly WorkingSpan[];
  readonly lots: CellLots;
}

/**
 * The newest days of the cell: its turns, and the lots that came and went.
 *
 * @param holding ids of the reasons while which the machine stands; left out for its own faults alone
 */
export async function readCellDays(bench: Bench, holding?: readonly string[]): Promise<CellHistory> {
  const inHand = bench.turn.value;
  const starts = await bench.log.readLatestStarts('turn', TURNS);
  const turns = await Promise.all(
    starts.map(async (start) => {
      const id = recordKey(start);
      return inHand?.id === id ? inHand : foldAnyTurn(await bench.log.readStream(id));
    }),
  );
  return { days: cellDays(turns, holding), working: workingSpans(turns), lots: await readLots(bench) };
}

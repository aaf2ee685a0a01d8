import { inOrder } from '../records/in-order';
import type { LogRecord } from '../records/log-record';
import type { LotInside } from '../records/lot-fact';
import { recordKey } from '../records/record-key';

/** Parts that came together and left together. Wall clock, milliseconds. */
export interface LotStay {
  readonly lot: string;
  readonly parts: number;
  readonly arrivedWallMs: number;
  readonly releasedWallMs: number;
}

/** What came to the cell and left it. */
export interface CellLots {
  readonly stays: readonly LotStay[];
  /** Oldest first. */
  readonly inside: readonly LotInside[];
  /** Parts released that nobody saw arrive: they have no lead time. */
  readonly unseen: number;
  /** Every coming and going, in order: parts, negative for those released. */
  readonly moves: readonly { readonly wallMs: number; readonly parts: number }[];
  /** Key and stream of the last move, which Undo would take back; null when there is none. */
  readonly last: { readonly key: string; readonly stream: string } | null;
}

/**
 * The lots of a cell from their records, of one or several days and tablets. A release that names a lot is of that
 * lot; any other is of what came first. Parts of a lot may leave in several trolleys. What was inside when the
 * first of these days was opened is inside from its own arrival on.
 */
export function foldLots(records: readonly LogRecord[]): CellLots {
  const undone = new Set(records.flatMap(({ fact }) => (fact.kind === 'undone' ? [fact.of] : [])));
  const told = inOrder(records).filter((record) => !undone.has(recordKey(record)));
  const inside: { lot: string; left: number; arrivedWallMs: number }[] = [];
  const stays: LotStay[] = [];
  const moves: { wallMs: number; parts: number }[] = [];
  let unseen = 0;
  let last: CellLots['last'] = null;
  const opening = told.find(({ fact }) => fact.kind === 'lots-opened')?.fact;
  for (const { lot, parts, arrivedWallMs } of (opening?.kind === 'lots-opened' && opening.inside) || []) {
    inside.push({ lot, left: parts, arrivedWallMs });
    moves.push({ wallMs: arrivedWallMs, parts });
  }
  for (const record of told) {
    const { fact, stamp, stream } = record;
    if (fact.kind !== 'lot-arrived' && fact.kind !== 'lot-released') continue;
    last = { key: recordKey(record), stream };
    if (fact.kind === 'lot-arrived') {
      inside.push({ lot: fact.lot, left: fact.parts, arrivedWallMs: stamp.wallMs });
      moves.push({ wallMs: stamp.wallMs, parts: fact.parts });
      continue;
    }
    let toRelease = fact.parts;
    for (const own of inside) {
      if (fact.lot !== '' && own.lot !== fact.lot) continue;
      const parts = Math.min(own.left, toRelease);
      if (parts === 0) continue;
      own.left -= parts;
      toRelease -= parts;
      const { lot, arrivedWallMs } = own;
      // Two tablets' clocks may differ; nothing leaves before it came.
      stays.push({ lot, parts, arrivedWallMs, releasedWallMs: Math.max(arrivedWallMs, stamp.wallMs) });
    }
    if (fact.parts > toRelease) moves.push({ wallMs: stamp.wallMs, parts: toRelease - fact.parts });
    unseen += toRelease;
    while (inside[0]?.left === 0) inside.shift();
  }
  return {
    stays,
    inside: inside
      .filter(({ left }) => left > 0)
      .map(({ lot, left, arrivedWallMs }) => ({ lot, parts: left, arrivedWallMs })),
    unseen,
    moves,
    last,
  };
}

import type { CellLots } from '../../domain/cell/fold-lots';
import type { Bench } from '../bench';
import { lotArrives } from './lot-arrives';
import { releaseLot } from './release-lot';

/** A lot's number was scanned: one that is inside is released whole, any other arrives. Says which. */
export async function scanLot(
  bench: Bench,
  { inside }: CellLots,
  number: string,
  partsOfNewLot: number,
): Promise<'arrived' | 'released'> {
  const lot = number.trim();
  const parts = inside.reduce((sum, own) => sum + (own.lot === lot ? own.parts : 0), 0);
  if (parts > 0) await releaseLot(bench, parts, lot);
  else await lotArrives(bench, partsOfNewLot, lot);
  return parts > 0 ? 'released' : 'arrived';
}

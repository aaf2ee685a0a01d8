import { foldCellSettings } from '../../domain/cell/fold-cell-settings';
import { SHOP_STREAM } from '../../domain/records/log-record';
import type { CellSettings } from '../../domain/records/shop-fact';
import type { Bench } from '../bench';

/** How the cell is fed, emptied and asked for, as the shop last set it. */
export async function readCellSettings(bench: Bench): Promise<CellSettings> {
  return foldCellSettings(await bench.log.readStream(SHOP_STREAM));
}

/**
 * Sets how the cell is fed, emptied and asked for.
 *
 * @throws {RangeError} setCell requires lots of whole parts from 1, and parts left from 0
 * @throws {RangeError} setCell requires a demand above 0, or none
 * @throws {RangeError} setCell requires costs from 0
 */
export function setCell(bench: Bench, cell: CellSettings): void {
  const areLots = [cell.arrivalLot, cell.trolley, cell.refillAt + 1].every(
    (parts) => Number.isInteger(parts) && parts >= 1,
  );
  if (!areLots) throw new RangeError('setCell requires lots of whole parts from 1, and parts left from 0');
  if (cell.partsPerDay !== null && !(cell.partsPerDay > 0)) {
    throw new RangeError('setCell requires a demand above 0, or none');
  }
  const { operatorCost = 0, machineCost = 0 } = cell;
  if (!(operatorCost >= 0 && machineCost >= 0)) throw new RangeError('setCell requires costs from 0');
  bench.record(SHOP_STREAM, [{ kind: 'cell-set', cell }]);
}

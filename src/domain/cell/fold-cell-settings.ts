import { inOrder } from '../records/in-order';
import type { LogRecord } from '../records/log-record';
import type { CellSettings } from '../records/shop-fact';

/** Before a shop says otherwise: parts come and go one by one, just in time. */
export const firstSettings: CellSettings = {
  arrivalLot: 1,
  refillAt: 0,
  trolley: 1,
  partsPerDay: null,
  valueAdding: [],
  putDownWith: '',
  byOther: [],
};

/** The cell's settings from the records of the shop's stream: the last ones hold. */
export function foldCellSettings(shop: readonly LogRecord[]): CellSettings {
  return inOrder(shop).reduce<CellSettings>(
    (before, { fact }) => (fact.kind === 'cell-set' ? fact.cell : before),
    firstSettings,
  );
}

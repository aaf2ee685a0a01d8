import { SHOP_STREAM } from '../../domain/records/log-record';
import type { ElementDefinition } from '../../domain/shop/element-definition';
import type { Bench } from '../bench';

/**
 * Writes a new revision of a part's method; earlier revisions never change. Only one that nothing was timed under yet
 * is written again in its place.
 *
 * @throws {RangeError} reviseMethod requires a part of the shop
 * @throws {RangeError} reviseMethod requires at least one element, each with a name of its own
 * @throws {RangeError} reviseMethod requires whole work units per occurrence, 1 or more
 * @throws {RangeError} reviseMethod requires a whole number of parts per cycle, 1 or more
 */
export function reviseMethod(
  bench: Bench,
  part: string,
  elements: readonly ElementDefinition[],
  {
    partsPerCycle = 1,
    conditions = '',
    inPlace = false,
  }: { partsPerCycle?: number; conditions?: string; inPlace?: boolean } = {},
): void {
  if (!bench.shop.value.parts.some(({ id }) => id === part)) {
    throw new RangeError('reviseMethod requires a part of the shop');
  }
  const names = elements.map(({ name }) => name.trim());
  if (names.length === 0 || names.includes('') || new Set(names).size < names.length) {
    throw new RangeError('reviseMethod requires at least one element, each with a name of its own');
  }
  if (!elements.every(({ unitsPerOccurrence }) => isCount(unitsPerOccurrence))) {
    throw new RangeError('reviseMethod requires whole work units per occurrence, 1 or more');
  }
  if (!isCount(partsPerCycle)) {
    throw new RangeError('reviseMethod requires a whole number of parts per cycle, 1 or more');
  }
  bench.record(SHOP_STREAM, [
    {
      kind: 'method-revised',
      part,
      elements,
      partsPerCycle,
      conditions,
      ...(inPlace ? { inPlace: true } : {}),
    },
  ]);
}

function isCount(value: number): boolean {
  return Number.isInteger(value) && value >= 1;
}

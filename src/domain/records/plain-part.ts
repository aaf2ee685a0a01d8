import type { PartInHand } from './turn-fact';

/** A part in hand without what else a fact or a part done carries. */
export function plainPart({ part, partCode, targetMs, partsPerTap }: PartInHand): PartInHand {
  return { part, partCode, targetMs, ...(partsPerTap === undefined ? {} : { partsPerTap }) };
}

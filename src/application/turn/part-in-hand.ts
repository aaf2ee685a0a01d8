import type { PartInHand } from '../../domain/records/turn-fact';
import type { Part } from '../../domain/shop/shop';

/**
 * A part as a turn remembers it: with the target and the parts a tap of this moment, so that a later method rewrites
 * nothing.
 */
export function partInHand({ id, code, targetMs, methods }: Part): PartInHand {
  const partsPerTap = methods.at(-1)?.partsPerCycle ?? 1;
  return { part: id, partCode: code, targetMs, ...(partsPerTap > 1 ? { partsPerTap } : {}) };
}

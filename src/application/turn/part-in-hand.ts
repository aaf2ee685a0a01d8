import type { PartInHand } from '../../domain/records/turn-fact';
import type { Part } from '../../domain/shop/shop';

/** A part as a turn remembers it: with the target of this moment, so that a later one rewrites nothing. */
export function partInHand({ id, code, targetMs }: Part): PartInHand {
  return { part: id, partCode: code, targetMs };
}

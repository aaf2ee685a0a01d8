import type { PartInHand } from './turn-fact';

/** A part in hand without what else a fact or a part done carries. */
export function plainPart(fact: PartInHand): PartInHand {
  const { part, partCode, targetMs, partsPerTap, targetSource, tapping, elements } = fact;
  return {
    part,
    partCode,
    targetMs,
    ...(partsPerTap && { partsPerTap }),
    ...(targetSource && { targetSource }),
    ...(tapping && { tapping }),
    ...(elements && { elements }),
  };
}

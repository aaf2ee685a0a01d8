import type { PartInHand } from '../../domain/records/turn-fact';
import type { ElementDefinition } from '../../domain/shop/element-definition';
import type { Part } from '../../domain/shop/shop';

/**
 * A part as a turn remembers it: with the target and the parts a tap of this moment, so that a later method rewrites
 * nothing.
 */
export function partInHand({ id, code, targetMs, targetSource, tapping, methods }: Part): PartInHand {
  const { partsPerCycle = 1, elements = [] } = methods.at(-1) ?? {};
  const tapped = elements.filter(isTapped).map(({ name }) => name);
  // A method of one element, or none at all yet, is tapped part by part.
  const isByElement = tapping === 'elements' && tapped.length > 1;
  return {
    part: id,
    partCode: code,
    targetMs,
    ...(partsPerCycle > 1 && { partsPerTap: partsPerCycle }),
    // A standard that another one has followed is a target like one that was typed.
    ...(targetSource && targetSource !== 'past' && { targetSource }),
    ...(tapping === 'start-stop' && { tapping }),
    ...(isByElement && { tapping, elements: tapped }),
  };
}

/** What the hands do in every cycle, one after the other; the machine ends its own elements, and nobody taps then. */
function isTapped({ elementClass, work }: ElementDefinition): boolean {
  return elementClass === 'repetitive' && work !== 'machine';
}

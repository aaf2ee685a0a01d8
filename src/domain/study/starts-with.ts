import type { ElementDefinition } from '../shop/element-definition';

/**
 * The element of the operator with whose end a machine element begins, as places in a list: the last external one
 * before it, round the end of the cycle, because internal work is done while the machine runs; without any
 * external one the last element before it. −1 where the operator has none.
 */
export function startsWith(
  elements: readonly Pick<ElementDefinition, 'work' | 'placement'>[],
  machine: number,
): number {
  const before = [...elements.keys()].map((step) => (machine - 1 - step + elements.length) % elements.length);
  const byHand = before.filter((index) => elements[index]!.work !== 'machine');
  return byHand.find((index) => elements[index]!.placement === 'external') ?? byHand[0] ?? -1;
}

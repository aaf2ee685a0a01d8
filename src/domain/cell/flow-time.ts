import type { CellElement, CellWork } from './cell-work';

/**
 * How long a part takes from the start of its own cycle until it is put down, from mean times, milliseconds.
 *
 * With a machine it is put down in the cycle after its own: cycle + external + internal work up to the element with
 * which it leaves the hands. Without one, at the end of its own. What another person does comes on top.
 */
export function flowTimeMs({ elements }: CellWork, cycleMs: number, putDownWith: string): number {
  const sum = (own: readonly CellElement[]) => own.reduce((total, { meanMs }) => total + meanMs, 0);
  const of = (place: CellElement['place']) => elements.filter((element) => element.place === place);
  const internal = of('internal');
  const last = internal.findIndex(({ name }) => name === putDownWith);
  const before = last < 0 ? internal : internal.slice(0, last + 1);
  const hasMachine = sum(of('machine')) > 0;
  return (hasMachine ? cycleMs : 0) + sum(of('external')) + sum(before) + sum(of('other'));
}

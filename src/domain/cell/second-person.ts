import { changedWork, noChange } from './cell-change';
import { cellCycle } from './cell-cycle';
import type { CellWork } from './cell-work';

/**
 * The elements that a second person should take so that a part takes least: neighbours in the order of the method,
 * and with a machine only what is done while it runs, since who loads it stays with it. The fewest where several do
 * equally well; none where nobody is helped.
 */
export function secondPerson(work: CellWork): string[] {
  const hasMachine = work.elements.some(({ place, meanMs }) => place === 'machine' && meanMs > 0);
  const hands = work.elements.filter(
    ({ place }) => place === 'internal' || (!hasMachine && place === 'external'),
  );
  let best: readonly string[] = [];
  let bestMs = cellCycle(work).partMs;
  for (let count = 1; count <= hands.length; count += 1) {
    for (let from = 0; from + count <= hands.length; from += 1) {
      const names = hands.slice(from, from + count).map(({ name }) => name);
      const moved = Object.fromEntries(names.map((name) => [name, 'other'] as const));
      const { partMs } = cellCycle(changedWork(work, { ...noChange, moved }));
      // Less than half a percent is no reason to hand a part over.
      if (partMs < bestMs * 0.995) [best, bestMs] = [names, partMs];
    }
  }
  return [...best];
}

import type { CellElement } from './cell-work';

/**
 * What the operator does while the machine stands, in the order of a round that repeats: what the method lists behind
 * the machine's run comes first, as the part before is taken out then; the last one starts the machine, which is the
 * external element before it in the list, round the end. So a study and a chart name the same start.
 */
export function atStandingMachine(elements: readonly CellElement[]): CellElement[] {
  const run = elements.findIndex(({ place }) => place === 'machine');
  return [...elements.slice(run + 1), ...elements.slice(0, run + 1)].filter(
    ({ place }) => place === 'external',
  );
}

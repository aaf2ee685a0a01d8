import type { CellPlace, CellWork } from './cell-work';

/** The times of each branch of the cell, one for each timed cycle, milliseconds a part. */
export type Branches = Readonly<Record<CellPlace, Float64Array>>;

/** Adds the elements of each branch up, cycle by cycle. */
export function branchesOf({ elements }: CellWork): Branches {
  const cycles = elements[0]?.timesMs.length ?? 0;
  const sum = (place: CellPlace) => {
    const times = new Float64Array(cycles);
    for (const element of elements) {
      if (element.place !== place) continue;
      for (let i = 0; i < cycles; i += 1) times[i]! += element.timesMs[i]!;
    }
    return times;
  };
  return {
    external: sum('external'),
    internal: sum('internal'),
    machine: sum('machine'),
    other: sum('other'),
  };
}

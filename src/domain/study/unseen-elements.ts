import type { Study } from './study';

/** Elements of the method that have not a single reading: the sheet's sums leave them out and say so. */
export function unseenElements({ method, readings }: Pick<Study, 'method' | 'readings'>): string[] {
  const seen = new Set(readings.map(({ row }) => row.elementNo));
  return method.flatMap(({ name }, index) => (seen.has(index + 1) ? [] : [name]));
}

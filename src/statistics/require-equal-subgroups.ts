import { requireReadings } from './require-readings';

/**
 * The door check of charts of subgroups: at least two subgroups, all of one size, which is returned.
 *
 * Source: the rule of this folder that wrong input throws and never comes out as NaN.
 *
 * @throws {RangeError} "<name> requires at least two subgroups"
 * @throws {RangeError} "<name> requires subgroups of one size from 2 to 50"
 * @example
 * requireEqualSubgroups('meanRangeChart', [[1, 2, 3], [2, 3, 4]]) // => 3
 */
export function requireEqualSubgroups(name: string, subgroups: readonly (readonly number[])[]): number {
  if (subgroups.length < 2) throw new RangeError(`${name} requires at least two subgroups`);
  const size = subgroups[0]!.length;
  if (size < 2 || size > 50 || subgroups.some((subgroup) => subgroup.length !== size)) {
    throw new RangeError(`${name} requires subgroups of one size from 2 to 50`);
  }
  for (const subgroup of subgroups) requireReadings(name, subgroup, size);
  return size;
}

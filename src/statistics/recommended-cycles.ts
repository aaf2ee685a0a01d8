import { requireNumber } from './require-number';

/** Listed cycle times in minutes, with the cycles recommended at them. */
const POINTS: readonly (readonly [minutes: number, cycles: number])[] = [
  [2, 20],
  [1, 30],
  [0.75, 40],
  [0.5, 60],
  [0.25, 100],
];

/** Ends of listed ranges in minutes, with the cycles recommended within them. */
const RANGES: readonly (readonly [upTo: number, cycles: number])[] = [
  [5, 15],
  [10, 10],
  [20, 8],
];

/**
 * Recommended cycles by cycle time: the General Electric guidance table, for planning a study before there is
 * any reading to compute from.
 *
 * Rule: up to two minutes the table lists points, and a cycle between two of them gets the row of the shorter,
 *   which asks for more. Beyond, it lists ranges; where two meet (5, 10, 20 min) the row that asks for more
 *   holds. 40 min and over get 3, as printed.
 *   cycle in minutes; answer a count
 * Source: General Electric, Schenectady Works, Time Study Manual (A. E. Shaw), as reprinted in Niebel &
 *   Freivalds, Methods, Standards, and Work Design. From memory: check it against the book.
 *
 * @throws {RangeError} recommendedCycles requires a cycle above 0 minutes
 * @example
 * recommendedCycles(0.6) // => 60
 */
export function recommendedCycles(cycleMinutes: number): number {
  requireNumber('recommendedCycles', 'a cycle above 0 minutes', cycleMinutes, cycleMinutes > 0);
  if (cycleMinutes >= 40) return 3;
  if (cycleMinutes > 2) return RANGES.find(([upTo]) => cycleMinutes <= upTo)?.[1] ?? 5;
  return POINTS.find(([minutes]) => minutes <= cycleMinutes)?.[1] ?? 200;
}

import { requireNumber } from './require-number';

/** Hours per piece above which a row holds; cycles for over 10 000, 1 000 to 10 000, under 1 000 pieces a year. */
const ROWS: readonly (readonly [over: number, many: number, some: number, few: number])[] = [
  [8, 2, 1, 1],
  [3, 3, 2, 1],
  [2, 4, 2, 1],
  [1, 5, 3, 2],
  [0.8, 6, 3, 2],
  [0.5, 8, 4, 3],
  [0.3, 10, 5, 4],
  [0.2, 12, 6, 5],
  [0.12, 15, 8, 6],
  [0.08, 20, 10, 8],
  [0.05, 25, 12, 10],
  [0.035, 30, 15, 12],
  [0.02, 40, 20, 15],
  [0.012, 50, 25, 20],
  [0.008, 60, 30, 25],
  [0.005, 80, 40, 30],
  [0.003, 100, 50, 40],
  [0.002, 120, 60, 50],
  [0, 140, 80, 60],
];

/**
 * Minimum cycles by activity: the Westinghouse Electric guidance table, by time per piece and pieces a year.
 *
 * Rule: the first row whose hours per piece the piece exceeds; 1 000 and 10 000 pieces belong to the middle
 *   column
 *   time in hours per piece; activity in pieces a year; answer a count
 * Source: Westinghouse Electric, as reprinted in work-measurement texts. From memory and not confirmed by any
 *   copy, the weakest table here: guidance for planning, never a proof that enough was timed.
 *
 * @throws {RangeError} minimumCyclesByActivity requires a time above 0 hours per piece
 * @throws {RangeError} minimumCyclesByActivity requires a yearly count above 0
 * @example
 * minimumCyclesByActivity(0.4, 5000) // => 5
 */
export function minimumCyclesByActivity(hoursPerPiece: number, piecesPerYear: number): number {
  const name = 'minimumCyclesByActivity';
  requireNumber(name, 'a time above 0 hours per piece', hoursPerPiece, hoursPerPiece > 0);
  requireNumber(name, 'a yearly count above 0', piecesPerYear, piecesPerYear > 0);
  const [, many, some, few] = ROWS.find(([over]) => hoursPerPiece > over)!;
  if (piecesPerYear > 10_000) return many;
  return piecesPerYear >= 1000 ? some : few;
}

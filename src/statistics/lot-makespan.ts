import { requireNumber } from './require-number';
import { requireTimes } from './require-times';

/** When the parts of a lot are through, counted from its start, in the unit of the stage times. */
export interface LotMakespan {
  readonly batchFirst: number;
  readonly batchLast: number;
  readonly onePieceFirst: number;
  readonly onePieceLast: number;
}

/**
 * Lot makespan: a lot through stages as a batch, each stage doing the whole lot before the next begins, and one
 * piece at a time, a station for each stage.
 *
 * Formula: batch last = Q·Σt, batch first = Q·(Σt − t_k) + t_k; one piece first = Σt, last = Σt + (Q − 1)·max t
 *   t  stage times for one part, t_k the last; Q  parts of the lot; answers in the unit of t
 *   Work in process is Q in a batch, and at most the number of stages one piece at a time.
 * Source: the lean trade's exercise of ten parts and three steps of a minute (30, 21, 12 and 3 minutes).
 *
 * @throws {RangeError} lotMakespan requires a whole lot from 1
 * @throws {RangeError} lotMakespan requires times from 0 to 1e150
 * @throws {RangeError} lotMakespan requires at least one stage
 * @example
 * lotMakespan(10, [1, 1, 1]) // => { batchFirst: 21, batchLast: 30, onePieceFirst: 3, onePieceLast: 12 }
 */
export function lotMakespan(lot: number, stages: readonly number[]): LotMakespan {
  requireNumber('lotMakespan', 'a whole lot from 1', lot, Number.isInteger(lot) && lot >= 1);
  requireTimes('lotMakespan', stages);
  const last = stages.at(-1);
  if (last === undefined) throw new RangeError('lotMakespan requires at least one stage');
  const total = stages.reduce((sum, time) => sum + time, 0);
  return {
    batchFirst: lot * (total - last) + last,
    batchLast: lot * total,
    onePieceFirst: total,
    onePieceLast: total + (lot - 1) * Math.max(...stages),
  };
}

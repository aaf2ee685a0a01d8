import { requireNumber } from './require-number';
import { requireTimes } from './require-times';

/** How a cell is fed and emptied. Times in one unit. */
export interface CellFlow {
  /** Between two parts. */
  readonly interval: number;
  /** From the start of its own cycle until the part is put down. */
  readonly flowTime: number;
  /** Parts that arrive together. */
  readonly arrivalLot: number;
  /** Parts left before the cell when the next lot arrives. */
  readonly refillAt: number;
  /** Parts that leave together. */
  readonly trolley: number;
}

/** The mean lead time in its three parts, and their sum. */
export interface LeadTimeTerms {
  readonly arrivalLot: number;
  readonly flow: number;
  readonly trolley: number;
  readonly total: number;
}

/**
 * Mean lead time of a cell that is fed by lots and emptied by trolleys, in three terms.
 *
 * Formula: c·(r + (Q − 1)/2) + F + c·(q − 1)/2
 *   c  interval between parts; F  own flow time; both in one unit, and so are the terms
 *   Q  parts of an arrival lot; r  parts left when it arrives; q  parts of a trolley
 *   The middle part of a lot waits for half of the lot before it, and then for half of its trolley.
 * Source: algebra on uniform arrivals of whole lots; tried against the simulation of the cell.
 *
 * @throws {RangeError} leadTimeTerms requires times from 0 to 1e150
 * @throws {RangeError} leadTimeTerms requires whole lots from 1, and parts left from 0
 * @example
 * leadTimeTerms({ interval: 2, flowTime: 3, arrivalLot: 5, refillAt: 1, trolley: 3 }).total // => 11
 */
export function leadTimeTerms({
  interval,
  flowTime,
  arrivalLot,
  refillAt,
  trolley,
}: CellFlow): LeadTimeTerms {
  requireTimes('leadTimeTerms', [interval, flowTime]);
  for (const count of [arrivalLot, trolley, refillAt + 1]) {
    const isCount = Number.isInteger(count) && count >= 1;
    requireNumber('leadTimeTerms', 'whole lots from 1, and parts left from 0', count, isCount);
  }
  const waiting = interval * (refillAt + (arrivalLot - 1) / 2);
  const filling = (interval * (trolley - 1)) / 2;
  return { arrivalLot: waiting, flow: flowTime, trolley: filling, total: waiting + flowTime + filling };
}

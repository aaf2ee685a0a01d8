import { requireNumber } from './require-number';
import { requireTimes } from './require-times';
import { wholeReadings } from './whole-readings';

/** How evenly work is spread over stations. Shares, 0 to 1, each by the measure it names. */
export interface LineBalance {
  readonly total: number;
  readonly longest: number;
  /** Fewest stations that the takt allows by arithmetic alone. */
  readonly minimumStations: number;
  readonly efficiencyByTakt: number;
  readonly delayByTakt: number;
  readonly efficiencyByLongest: number;
  readonly delayByLongest: number;
}

/**
 * Line balance: efficiency and balance delay of stations, by takt and by the longest station.
 *
 * Formula: efficiency = Σt/(N·C), delay = 1 − efficiency, minimum stations = ⌈Σt/takt⌉
 *   t  station times; N  stations; C  the takt, or the longest station: the two differ and both are in use
 *   By takt it is above 1 where the stations cannot keep the takt. Times in one unit.
 * Source: Jacobs & Chase, Operations and Supply Chain Management, Example 8.2; Stevenson, Operations
 *   Management, percentage of idle time.
 *
 * @throws {RangeError} lineBalance requires times from 0 to 1e150
 * @throws {RangeError} lineBalance requires a takt above 0
 * @throws {RangeError} lineBalance requires at least one station that takes time
 * @example
 * lineBalance([4, 6], 8).efficiencyByTakt // => 0.625
 */
export function lineBalance(stations: readonly number[], takt: number): LineBalance {
  requireTimes('lineBalance', stations);
  requireNumber('lineBalance', 'a takt above 0', takt, takt > 0);
  const total = stations.reduce((sum, time) => sum + time, 0);
  const longest = Math.max(0, ...stations);
  requireNumber('lineBalance', 'at least one station that takes time', longest, longest > 0);
  const efficiency = (cycle: number) => total / (stations.length * cycle);
  return {
    total,
    longest,
    minimumStations: wholeReadings(total / takt),
    efficiencyByTakt: efficiency(takt),
    delayByTakt: 1 - efficiency(takt),
    efficiencyByLongest: efficiency(longest),
    delayByLongest: 1 - efficiency(longest),
  };
}

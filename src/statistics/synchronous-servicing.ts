import { requireNumber } from './require-number';
import { requireTimes } from './require-times';

/** One operator and machines that are all alike. Times in one unit. */
export interface MachinesServed {
  /** Operator and machine together: loading and unloading. */
  readonly together: number;
  /** Operator alone, while the machine runs: walking, inspecting, packing. */
  readonly alone: number;
  /** Machine alone. */
  readonly machine: number;
  readonly machines: number;
}

/** A repeating round over all machines, in the unit of the times. */
export interface ServicingRound {
  /** Machines whose service would just fill the machine's own cycle; not a whole number. */
  readonly ideal: number;
  readonly cycle: number;
  readonly operatorIdle: number;
  /** Of each machine. */
  readonly machineIdle: number;
}

/**
 * Synchronous servicing: one operator goes round machines that run a fixed time and then wait to be served.
 *
 * Formula: n′ = (l + m)/(l + w); cycle = l + m when N ≤ n′, else N·(l + w)
 *   l  operator and machine together; w  operator alone, for each machine; m  machine alone; one unit of time
 *   N  machines served; operator idle = cycle − N·(l + w); a machine's idle = cycle − (l + m)
 *   With no operator's time at all, n′ has no bound and is given as Infinity.
 * Source: Niebel & Freivalds, Methods, Standards, and Work Design, worker and machine relationships; Tompkins
 *   et al., Facilities Planning, as (a + t)/(a + b).
 *
 * @throws {RangeError} synchronousServicing requires times from 0 to 1e150
 * @throws {RangeError} synchronousServicing requires a whole number of machines from 1
 * @example
 * synchronousServicing({ together: 5, alone: 1, machine: 20, machines: 3 }).operatorIdle // => 7
 */
export function synchronousServicing({ together, alone, machine, machines }: MachinesServed): ServicingRound {
  requireTimes('synchronousServicing', [together, alone, machine]);
  const isCount = Number.isInteger(machines) && machines >= 1;
  requireNumber('synchronousServicing', 'a whole number of machines from 1', machines, isCount);
  const service = together + alone;
  const own = together + machine;
  const cycle = Math.max(own, machines * service);
  return {
    ideal: service > 0 ? own / service : Number.POSITIVE_INFINITY,
    cycle,
    operatorIdle: cycle - machines * service,
    machineIdle: cycle - own,
  };
}

import { randomServicing } from '../../statistics/random-servicing';
import { synchronousServicing } from '../../statistics/synchronous-servicing';
import type { CellCycle } from './cell-cycle';

/** One operator with so many machines like this one. */
export interface MachinesChoice {
  readonly machines: number;
  readonly partsPerHour: number;
  /** Shares of the time, 0 to 1, when machines are served in turn. */
  readonly operatorWaits: number;
  readonly machineWaits: number;
  /** Share of the machines' time lost when they call at any moment instead. */
  readonly lostAtRandom: number;
}

/** Rates for an hour of the operator and of one machine; 0 for both where nobody said. */
export interface HourlyRates {
  readonly operator: number;
  readonly machine: number;
}

const HOUR_MS = 3_600_000;
const MOST_MACHINES = 8;

/**
 * One operator with one machine, and so on to the one past n′, the number that his work would just fill; null
 * without a machine.
 *
 * Parts for each hour: N/round; the random forecast takes each machine to need him l/(l + m) of the time.
 */
export function serveMachines({
  externalMs,
  internalMs,
  machineMs,
  hasMachine,
}: CellCycle): { ideal: number; choices: MachinesChoice[] } | null {
  if (!hasMachine) return null;
  const times = { together: externalMs, alone: internalMs, machine: machineMs };
  const { ideal } = synchronousServicing({ ...times, machines: 1 });
  const most = Math.min(MOST_MACHINES, Math.max(2, Math.floor(ideal) + 1));
  const choices = Array.from({ length: most }, (_, place): MachinesChoice => {
    const machines = place + 1;
    const round = synchronousServicing({ ...times, machines });
    return {
      machines,
      partsPerHour: (machines * HOUR_MS) / round.cycle,
      operatorWaits: round.operatorIdle / round.cycle,
      machineWaits: round.machineIdle / round.cycle,
      lostAtRandom: randomServicing(machines, externalMs / (externalMs + machineMs)).lostShare,
    };
  });
  return { ideal, choices };
}

/**
 * What a part costs where one operator serves so many machines that give so many parts an hour, in the currency of
 * the rates; null without rates. On parts of the round alone it is servicing-cost.ts.
 *
 * Formula: cost = (K1 + N·K2)/parts for each hour
 *   K1, K2  an hour of the operator and of one machine; N  machines
 */
export function costOfPart(rates: HourlyRates, machines: number, partsPerHour: number): number | null {
  const perHour = rates.operator + machines * rates.machine;
  return perHour > 0 && partsPerHour > 0 ? perHour / partsPerHour : null;
}

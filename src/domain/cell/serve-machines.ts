import { randomServicing } from '../../statistics/random-servicing';
import { servicingCost } from '../../statistics/servicing-cost';
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
  /** In the currency of the rates, for a part; null without rates. */
  readonly cost: number | null;
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
export function serveMachines(
  { externalMs, internalMs, machineMs, hasMachine }: CellCycle,
  rates: HourlyRates,
): { ideal: number; choices: MachinesChoice[] } | null {
  if (!hasMachine) return null;
  const times = { together: externalMs, alone: internalMs, machine: machineMs };
  const { ideal } = synchronousServicing({ ...times, machines: 1 });
  const most = Math.min(MOST_MACHINES, Math.max(2, Math.floor(ideal) + 1));
  const isCosted = rates.operator > 0 || rates.machine > 0;
  const choices = Array.from({ length: most }, (_, place): MachinesChoice => {
    const machines = place + 1;
    const round = synchronousServicing({ ...times, machines });
    return {
      machines,
      partsPerHour: (machines * HOUR_MS) / round.cycle,
      operatorWaits: round.operatorIdle / round.cycle,
      machineWaits: round.machineIdle / round.cycle,
      lostAtRandom: randomServicing(machines, externalMs / (externalMs + machineMs)).lostShare,
      cost: isCosted
        ? servicingCost({ ...times, machines, operatorRate: rates.operator, machineRate: rates.machine }) /
          HOUR_MS
        : null,
    };
  });
  return { ideal, choices };
}

import { requireNumber } from './require-number';
import { synchronousServicing } from './synchronous-servicing';

/** The machines and what they cost. Times in hours when the costs are by the hour. */
export interface ServicingCost {
  readonly together: number;
  readonly alone: number;
  readonly machine: number;
  readonly machines: number;
  /** Of the operator, for one unit of time. */
  readonly operatorRate: number;
  /** Of one machine, for one unit of time. */
  readonly machineRate: number;
  /** Parts that one machine gives in one round; 1 when left out. */
  readonly partsEach?: number;
}

/**
 * Cost of a part when one operator serves N machines: compare it at the whole numbers beside n′.
 *
 * Formula: cost = (K1 + N·K2)·cycle/(N·u)
 *   K1, K2  cost of the operator and of one machine for each unit of time; N  machines
 *   u       parts of one machine in one round; cycle  see synchronous-servicing.ts; answer in the currency of K
 * Source: Niebel & Freivalds, Methods, Standards, and Work Design, worker and machine relationships.
 *
 * @throws {RangeError} servicingCost requires rates from 0 to 1e150
 * @throws {RangeError} servicingCost requires parts above 0
 * @throws {RangeError} synchronousServicing requires times from 0 to 1e150, and a whole number of machines from 1
 * @example
 * servicingCost({ together: 5, alone: 1, machine: 19, machines: 2, operatorRate: 10, machineRate: 30 }) // => 840
 */
export function servicingCost(plan: ServicingCost): number {
  const { operatorRate, machineRate, machines, partsEach = 1 } = plan;
  for (const rate of [operatorRate, machineRate]) {
    requireNumber('servicingCost', 'rates from 0 to 1e150', rate, rate >= 0 && rate <= 1e150);
  }
  requireNumber('servicingCost', 'parts above 0', partsEach, partsEach > 0);
  const { cycle } = synchronousServicing(plan);
  return ((operatorRate + machines * machineRate) * cycle) / (machines * partsEach);
}

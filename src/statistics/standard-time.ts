import { type AllowanceBasis, allowanceFactor } from './allowance-factor';
import { requireAllowance } from './require-allowance';
import { requireTimes } from './require-times';

/** The parts of a work unit's normal time, all in one unit, and the allowances on them. */
export interface StandardTimeParts {
  /** Normal time of work that the machine does not run beside. */
  readonly external: number;
  /** Normal time of work done while the machine runs. */
  readonly internal: number;
  /** Normal time of occasional elements, already times their frequency. */
  readonly occasional: number;
  /** Machine-controlled time; 0 when there is no machine. */
  readonly machine: number;
  /** Allowance on the operator's work, a share. */
  readonly allowance: number;
  /** Allowance on machine-controlled time, a share: a policy, 0 unless the firm says otherwise. */
  readonly machineAllowance: number;
  readonly basis: AllowanceBasis;
}

/** Normal and standard time of a work unit, in the unit of the parts, and what sets them. */
export interface StandardTime {
  readonly normalTime: number;
  readonly standardTime: number;
  /** The longer branch beside the machine, allowances in; null without a machine. */
  readonly governing: 'operator' | 'machine' | null;
}

/**
 * Standard time of a work unit, with or without a machine that runs beside the operator.
 *
 * Formula, without a machine: NT = external + internal + occasional, ST = NT·F(A)
 *   with one: NT = external + occasional + max(internal, machine)
 *             ST = (external + occasional)·F(A) + max(internal·F(A), machine·F(Am))
 *   times in one unit; A, Am  allowances, shares; F  allowance factor, 1 + A or 1/(1 − A) by the basis
 *   The machine governs a tie: shortening the operator's work would then shorten nothing.
 * Source: Groover, Work Systems and the Methods, Measurement, and Management of Work, problem 2.7 and chapter
 *   13; Stevenson, Operations Management, 14th edition, equations 7-6 to 7-8.
 *
 * @throws {RangeError} standardTime requires times from 0 to 1e150
 * @throws {RangeError} standardTime requires an allowance from 0 to 1000000
 * @throws {RangeError} standardTime requires an allowance below the whole shift
 * @throws {RangeError} standardTime requires a basis of normal_time or shift
 * @example
 * standardTime({ external: 1, internal: 2, occasional: 0.5, machine: 3, allowance: 0.1, machineAllowance: 0, basis: 'normal_time' }).standardTime // => 4.65
 */
export function standardTime(parts: StandardTimeParts): StandardTime {
  const { external, internal, occasional, machine, allowance, machineAllowance, basis } = parts;
  requireTimes('standardTime', [external, internal, occasional, machine]);
  requireAllowance('standardTime', allowance, basis);
  requireAllowance('standardTime', machineAllowance, basis);
  const factor = allowanceFactor(allowance, basis);
  if (machine === 0) {
    const normalTime = external + internal + occasional;
    return { normalTime, standardTime: normalTime * factor, governing: null };
  }
  const operatorBranch = internal * factor;
  const machineBranch = machine * allowanceFactor(machineAllowance, basis);
  return {
    normalTime: external + occasional + Math.max(internal, machine),
    standardTime: (external + occasional) * factor + Math.max(operatorBranch, machineBranch),
    governing: operatorBranch > machineBranch ? 'operator' : 'machine',
  };
}

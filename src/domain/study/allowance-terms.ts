export type AllowanceBasis = 'normal_time' | 'shift';

/** The shop's allowances for a study: a policy, printed beside every standard time. */
export interface AllowanceTerms {
  /** Per cent, components added and never compounded. */
  readonly allowancePct: number;
  /** `normal_time`: NT·(1 + A). `shift`: NT/(1 − A). */
  readonly basis: AllowanceBasis;
  /** Per cent on machine-controlled time. */
  readonly machineAllowancePct: number;
  /** What the allowance is for, line by line; left out where only the sum was given. */
  readonly lines?: readonly AllowanceLine[];
}

export interface AllowanceLine {
  readonly name: string;
  readonly pct: number;
}

export const noAllowances: AllowanceTerms = {
  allowancePct: 0,
  basis: 'normal_time',
  machineAllowancePct: 0,
};

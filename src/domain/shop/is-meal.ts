import type { CountedBreak } from './shift-calendar';

/** Where nobody said, a break from here on is a meal. */
const MEAL_BREAK_MS = 1_800_000;

/**
 * Whether a break is a meal, which nobody attends, or a rest, which is working time: as the shop marked it, else by
 * its length. That rests below half an hour are working time and meals are not is the rule of 29 CFR 785.18 and 785.19.
 *
 * @param lengthMs milliseconds
 */
export function isMeal({ isAttended }: CountedBreak, lengthMs: number): boolean {
  return isAttended === undefined ? lengthMs >= MEAL_BREAK_MS : !isAttended;
}

import { wilsonInterval } from '../../statistics/wilson-interval';

/**
 * First-pass yield: parts good the first time ÷ parts inspected, with its 95 % interval (Wilson); a part that
 * nobody judged counts as inspected and good. Null when nothing was inspected.
 */
export function firstPassYield(
  goodFirstTime: number,
  inspected: number,
): { readonly share: number; readonly lower: number; readonly upper: number } | null {
  if (inspected === 0) return null;
  return { share: goodFirstTime / inspected, ...wilsonInterval(goodFirstTime, inspected) };
}

import { review } from '../../i18n/en/review';
import { formatNumber } from '../../i18n/format-number';
import { sideOfTarget } from './side-of-target';

/** A share of the target in the one wording that Review has for it: 12 % less time than target. */
export function againstTargetText(share: number): string {
  return review.against[sideOfTarget(share)](offText(share));
}

/** How far off the target, in whole per cent. */
export function offText(share: number): string {
  return formatNumber(Math.abs(Math.round(share * 100) - 100));
}

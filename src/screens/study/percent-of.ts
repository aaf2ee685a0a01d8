import { formatNumber } from '../../i18n/format-number';

export function percentOf(share: number): string {
  return formatNumber(share * 100, 1);
}

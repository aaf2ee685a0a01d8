import { cellGoverns } from '../../i18n/en/cell';
import { formatNumber } from '../../i18n/format-number';

/** What stands beside good parts a day: a standard time holds allowances, and this day of so many hours does not. */
export function dayWords(dayMs: number): string {
  const hours = dayMs / 3_600_000;
  return cellGoverns.dayIs(formatNumber(hours, Number.isInteger(hours) ? 0 : 1));
}

import { cellGoverns } from '../../i18n/en/cell';
import { formatNumber } from '../../i18n/format-number';

/** What stands beside good parts a day: a standard time holds allowances, and this day of so many hours does not. */
export const dayWords = (dayMs: number) => cellGoverns.dayIs(formatNumber(dayMs / 3_600_000, 2));

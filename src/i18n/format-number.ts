import { locale } from './spoken';

const formats = new Map<string, Intl.NumberFormat>();

/** A number with so many decimals, in the tablet's language, with a true minus sign. */
export function formatNumber(value: number, digits = 0): string {
  const key = locale + digits;
  let format = formats.get(key);
  if (!format) {
    // Spanish leaves four digits in one by itself, and a column of them would not line up.
    const grouped = { useGrouping: 'always' } as const;
    format = new Intl.NumberFormat(locale, {
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
      ...grouped,
    });
    formats.set(key, format);
  }
  // −0.00 would claim a direction that is not there.
  const text = format.format(value).replace('-', '−');
  return /[1-9]/.test(text) ? text : text.replace('−', '');
}

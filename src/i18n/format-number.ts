const formats = new Map<number, Intl.NumberFormat>();

/** A number with so many decimals, in the tablet's language, with a true minus sign. */
export function formatNumber(value: number, digits = 0): string {
  let format = formats.get(digits);
  if (!format) {
    format = new Intl.NumberFormat('en', { minimumFractionDigits: digits, maximumFractionDigits: digits });
    formats.set(digits, format);
  }
  // −0.00 would claim a direction that is not there.
  const text = format.format(value).replace('-', '−');
  return /[1-9]/.test(text) ? text : text.replace('−', '');
}

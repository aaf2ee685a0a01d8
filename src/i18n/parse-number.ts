import { formatNumber } from './format-number';

/** Who is asked whether `1,234` is a thousand and more, or one and a bit. */
type LoneMark = 'language' | 'decimal' | 'group';

/** The mark before the decimals in the language that is spoken. */
export function decimalMark(): string {
  return formatNumber(0.5, 1).charAt(1);
}

/** A number as a field shows it: as it would be typed, with all its decimals and no groups. */
export function asTyped(value: number): string {
  return String(value).replace('.', decimalMark());
}

/**
 * Reads an amount of 0 or more as a person types it, with decimal comma or point and with or without groups of
 * three; null for anything else. Only `1,234` and `1.234` can be meant in two ways: the language decides.
 *
 * @example
 * parseNumber('1.234,5') // => 1234.5
 */
export function parseNumber(typed: string): number | null {
  return read(typed, 'language');
}

/**
 * Reads minutes, hours or per cent: a mark that stands alone is before decimals, in every language. Nobody types a
 * thousand minutes in groups, and a watch that shows points is read in any language.
 *
 * @example
 * parseDecimal('1,234') // => 1.234
 */
export function parseDecimal(typed: string): number | null {
  return read(typed, 'decimal');
}

/**
 * Reads a count: it has no decimals, so a mark before three digits can only part groups.
 *
 * @example
 * parseWhole('1.234') // => 1234
 */
export function parseWhole(typed: string): number | null {
  const value = read(typed, 'group');
  return value !== null && Number.isSafeInteger(value) && !/[.,]$/.test(typed.trim()) ? value : null;
}

function read(typed: string, lone: LoneMark): number | null {
  // A blank parts groups of three as well.
  const text = typed.trim().replace(/(\d)[ \u00a0\u202f](?=\d{3}(?!\d))/g, '$1');
  const marks = text.match(/[.,]/g) ?? [];
  const last = marks.at(-1) ?? '';
  const isMixed = marks.some((mark) => mark !== last);
  const isDecimal = isMixed || (marks.length === 1 && !partsGroups(text, last, lone));
  const end = isDecimal ? text.lastIndexOf(last) : text.length;
  const whole = text.slice(0, end);
  const decimals = text.slice(end + 1);
  const isWhole = /^\d*$/.test(whole) || /^[1-9]\d{0,2}(?:([.,])\d{3})(?:\1\d{3})*$/.test(whole);
  if (!isWhole || !/^\d*$/.test(decimals) || whole + decimals === '') return null;
  return Number(`${whole.replace(/[.,]/g, '')}.${decimals}`);
}

function partsGroups(text: string, mark: string, lone: LoneMark): boolean {
  if (!/^[1-9]\d{0,2}[.,]\d{3}$/.test(text)) return false;
  return lone === 'language' ? mark !== decimalMark() : lone === 'group';
}

import type { TableMarks } from './table-profile';

/**
 * Writes a number, multiplied by a power of ten, as the shortest plain decimal that reads back the same.
 *
 * The power moves the decimal mark in the text, so that nothing is rounded: 1234.5 ms are 1.2345 s, and
 * come back as 1234.5 ms.
 *
 * @throws {RangeError} writeDecimal requires a finite number
 * @example
 * writeDecimal(570, '.', -3) // => '0.57'
 */
export function writeDecimal(value: number, decimalMark: TableMarks['decimalMark'] = '.', power = 0): string {
  if (!Number.isFinite(value)) throw new RangeError('writeDecimal requires a finite number');
  const [, sign = '', first = '0', rest = '', exponent = '0'] =
    /^(-?)(\d)(?:\.(\d+))?e([+-]\d+)$/.exec(value.toExponential()) ?? [];
  const digits = first + rest;
  const whole = Number(exponent) + power + 1;
  const left = whole > 0 ? digits.slice(0, whole).padEnd(whole, '0') : '0';
  const right = whole > 0 ? digits.slice(whole) : '0'.repeat(-whole) + digits;
  return sign + left + (/[1-9]/.test(right) ? decimalMark + right : '');
}

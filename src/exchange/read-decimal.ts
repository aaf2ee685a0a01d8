import type { TableMarks } from './table-profile';

/**
 * Reads a decimal number from a cell, multiplied by a power of ten; null when the cell holds anything else.
 *
 * The power is added to the exponent of the text, never multiplied into the number: 0.57 s are 570 ms,
 * where 0.57 × 1000 is 569.9999999999999.
 *
 * @example
 * readDecimal('0.57', '.', 3) // => 570
 */
export function readDecimal(text: string, decimalMark: TableMarks['decimalMark'], power = 0): number | null {
  const plain = text.trim().replace(decimalMark, '.');
  if (decimalMark === ',' && text.includes('.')) return null;
  const found = /^([+-]?(?:\d+\.?\d*|\.\d+))(?:[eE]([+-]?\d{1,4}))?$/.exec(plain);
  if (!found) return null;
  const value = Number(`${found[1]}e${Number(found[2] ?? 0) + power}`);
  // −0 would be another number than the 0 it is written as.
  return Number.isFinite(value) ? value + 0 : null;
}

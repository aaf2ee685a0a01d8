import { formatNumber } from './format-number';

/** A duration as the engineer writes it: decimal minutes, 1.80. */
export function decimalMinutes(ms: number, digits = 2): string {
  return formatNumber(ms / 60_000, digits);
}

/** A duration in seconds, 108.0. */
export function decimalSeconds(ms: number, digits = 1): string {
  return formatNumber(ms / 1_000, digits);
}

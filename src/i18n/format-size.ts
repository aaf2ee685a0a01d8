import { formatNumber } from './format-number';

/** A file's size in kilobytes of 1,000 bytes, from a megabyte on in megabytes. */
export function formatSize(bytes: number): string {
  return bytes < 1_000_000
    ? `${formatNumber(bytes / 1_000, 1)} kB`
    : `${formatNumber(bytes / 1_000_000, 1)} MB`;
}

import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/** Takes a comparison back. It stays in the book, marked with who took it back and when. */
export function withdrawComparison(bench: Bench, comparison: string, by: string): void {
  bench.record(SHOP_STREAM, [{ kind: 'comparison-withdrawn', comparison, by: by.trim() }]);
}

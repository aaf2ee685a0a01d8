import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/** Takes a quotation back. It stays in the book, marked with who took it back and when. */
export function withdrawQuotation(bench: Bench, quotation: string, by: string): void {
  bench.record(SHOP_STREAM, [{ kind: 'quotation-withdrawn', quotation, by: by.trim() }]);
}

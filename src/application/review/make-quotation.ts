import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Quotation } from '../../domain/records/review-fact';
import type { Bench } from '../bench';

/**
 * Writes a quotation down as it was given, with the standard it rests on.
 *
 * @throws {RangeError} makeQuotation requires a whole number of parts from 1
 */
export function makeQuotation(bench: Bench, { by, ...quotation }: Quotation & { by: string }): void {
  if (!(Number.isSafeInteger(quotation.quantity) && quotation.quantity >= 1)) {
    throw new RangeError('makeQuotation requires a whole number of parts from 1');
  }
  bench.record(SHOP_STREAM, [
    { kind: 'quotation-made', ...quotation, note: quotation.note.trim(), by: by.trim() },
  ]);
}

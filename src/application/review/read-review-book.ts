import { SHOP_STREAM } from '../../domain/records/log-record';
import { foldReviewBook, type ReviewBook } from '../../domain/weeks/review-book';
import type { Bench } from '../bench';

/** What the foreman decided, noted and promised. */
export async function readReviewBook(bench: Bench): Promise<ReviewBook> {
  return foldReviewBook(await bench.log.readStream(SHOP_STREAM));
}

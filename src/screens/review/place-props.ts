import type { DaySummary } from '../../domain/day/summarise-day';
import type { ReviewBook } from '../../domain/weeks/review-book';
import type { Working } from './working';

/** What every place of Review is given. */
export interface PlaceProps {
  /** Newest first. */
  readonly days: readonly DaySummary[];
  readonly book: ReviewBook;
  readonly open: (working: Working) => void;
}

import { reviewPlaces as words } from '../../i18n/en/review-places';
import { formatDay } from '../../i18n/format-day';

interface Props {
  /** The oldest day that was read. */
  readonly oldest: string;
  readonly nextWeeks: number;
  /** Null while older ones are being read. */
  readonly readOlder: (() => void) | null;
}

/** That there are days before those that were read: no figure here has them in it. On paper too. */
export function OlderDays({ oldest, nextWeeks, readOlder }: Props) {
  return (
    <div class="row">
      <p class="quiet">{words.readFrom(formatDay(oldest))}</p>
      {readOlder && (
        <button type="button" class="button no-print" onClick={readOlder}>
          {words.older(nextWeeks)}
        </button>
      )}
    </div>
  );
}

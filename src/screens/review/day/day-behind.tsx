import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { DaySummary } from '../../../domain/day/summarise-day';
import { type ReviewBook, setUpStandardAt } from '../../../domain/weeks/review-book';
import { reviewDayMore as words } from '../../../i18n/en/review-day-more';
import type { Working } from '../working';
import { BridgeTable } from './bridge-table';
import { HourTable } from './hour-table';
import { PartTimes } from './part-times';
import { RatioTable } from './ratio-table';
import { StoppageCosts } from './stoppage-costs';
import { useAttendedTurns } from './use-attended-turns';

interface Props {
  readonly day: DaySummary;
  readonly book: ReviewBook;
  readonly open: (working: Working) => void;
}

/** What stands behind a day, for whoever opens it. */
export function DayBehind({ day, book, open }: Props) {
  return (
    <div class="review-behind">
      <Behind title={words.hours.title}>{() => <Hours day={day} book={book} open={open} />}</Behind>
      {day.good > 0 && <Behind title={words.bridge.title}>{() => <BridgeTable day={day} />}</Behind>}
      {day.done > 0 && <Behind title={words.parts.title}>{() => <PartTimes day={day} />}</Behind>}
      {day.lost.length > 0 && <Behind title={words.cost.title}>{() => <Costs day={day} />}</Behind>}
      {day.done > 0 && <Behind title={words.ratios.title}>{() => <RatioTable day={day} />}</Behind>}
    </div>
  );
}

/** Opened only by those who want it, and worked out only then. */
function Behind({ title, children }: { title: string; children: () => ComponentChildren }) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <details class="review-more" onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>
        <h2>{title}</h2>
      </summary>
      {isOpen && children()}
    </details>
  );
}

function Hours({ day, book, open }: Props) {
  const turns = useAttendedTurns(day.day, true);
  const startedMs = turns?.[0]?.turn.startedAt.wallMs;
  if (!turns || startedMs === undefined) return null;
  return <HourTable turns={turns} setUpStandardMs={setUpStandardAt(book, startedMs)} open={open} />;
}

function Costs({ day }: { day: DaySummary }) {
  const turns = useAttendedTurns(day.day, true);
  return turns && <StoppageCosts turns={turns} />;
}

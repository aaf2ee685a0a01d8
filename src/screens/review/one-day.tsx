import type { TurnWithCorrections } from '../../application/review/read-turns-of-day';
import type { DayReview } from '../../domain/day/review-day';
import { DayTrust } from '../settle/day-trust';
import { TurnNotes } from '../settle/turn-notes';
import { DayBehind } from './day/day-behind';
import { DayFairness } from './day/day-fairness';
import { DayCorrections } from './day-corrections';
import { DayHead } from './day-head';
import { DayLedger } from './day-ledger';
import { DayLostTime } from './day-lost-time';
import { DayPicture } from './day-picture';
import { DayPutRight } from './day-put-right';
import { DaySheet } from './day-sheet';
import { DayToSettle } from './day-to-settle';
import type { PlaceProps } from './place-props';
import { useOpenTurns } from './use-open-turns';

interface Props extends Pick<PlaceProps, 'days' | 'open'> {
  readonly book: PlaceProps['book'] | null;
  readonly day: DayReview;
  readonly turns: readonly TurnWithCorrections[];
}

/** One day: what it was in words, its parts beside their targets, what was lost, and what is to be settled. */
export function OneDay({ day, turns, days, book, open }: Props) {
  const openTurns = useOpenTurns(turns);
  const questions = openTurns.reduce((sum, { doubts }) => sum + doubts.length, 0);
  const hasParts = day.parts.length > 0;
  const summary = days.find((each) => each.day === day.day);
  return (
    <>
      <DayHead day={day} days={days} questions={questions} />
      <DayTrust turns={turns.map(({ turn }) => turn)} />
      {hasParts && <DayPicture day={day} />}
      {hasParts && <DaySheet day={day} open={open} />}
      {summary && summary.good > 0 && <DayFairness day={summary} days={days} />}
      {day.elapsedMs > 0 && (
        <div class="review-time">
          <DayLostTime day={day} costs={summary?.lost ?? []} open={open} />
          <DayLedger day={day} open={open} />
        </div>
      )}
      {summary && book && day.elapsedMs > 0 && <DayBehind day={summary} book={book} />}
      <DayToSettle open={openTurns} />
      <TurnNotes turns={turns.map(({ turn }) => turn)} />
      <DayPutRight key={day.day} day={day.day} turns={turns.map(({ turn }) => turn)} />
      <DayCorrections corrections={turns.flatMap(({ corrections }) => corrections)} />
    </>
  );
}

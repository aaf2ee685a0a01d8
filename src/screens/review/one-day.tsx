import type { TurnWithCorrections } from '../../application/review/read-turns-of-day';
import type { DayReview } from '../../domain/day/review-day';
import { DayTrust } from '../settle/day-trust';
import type { Who } from '../settle/question';
import { TurnNotes } from '../settle/turn-notes';
import { DayBehind } from './day/day-behind';
import { DayFairness } from './day/day-fairness';
import { DayCorrections } from './day-corrections';
import { DayHead } from './day-head';
import { DayLedger } from './day-ledger';
import { DayLostTime } from './day-lost-time';
import { DayNote } from './day-note';
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
  readonly who: Who;
  setWho(who: Who): void;
}

/** One day: what it was in words, its parts beside their targets, what was lost, and what is to be settled. */
export function OneDay({ day, turns, days, book, open, who, setWho }: Props) {
  const openTurns = useOpenTurns(turns, day.day, book);
  const questions = openTurns.reduce((sum, { doubts }) => sum + doubts.length, 0);
  const hasParts = day.parts.length > 0;
  const summary = days.find((each) => each.day === day.day);
  return (
    <>
      <DayHead day={day} days={days} questions={questions} />
      {book && <DayNote key={day.day} day={day.day} notes={book.notes} />}
      <DayTrust turns={turns.map(({ turn }) => turn)} />
      {day.counted > 0 && <DayPicture day={day} />}
      {hasParts && <DaySheet day={day} open={open} />}
      {summary && summary.good > 0 && <DayFairness day={summary} days={days} open={open} />}
      {day.elapsedMs > 0 && (
        <div class="review-time">
          <DayLostTime day={day} costs={summary?.lost ?? []} open={open} />
          <DayLedger day={day} attended={summary ?? null} open={open} />
        </div>
      )}
      {summary && book && day.elapsedMs > 0 && <DayBehind day={summary} book={book} open={open} />}
      <DayToSettle open={openTurns} who={who} setWho={setWho} />
      <TurnNotes turns={turns.map(({ turn }) => turn)} />
      <DayPutRight
        key={day.day}
        day={day.day}
        turns={turns.map(({ turn }) => turn)}
        who={who}
        setWho={setWho}
      />
      <DayCorrections corrections={turns.flatMap(({ corrections }) => corrections)} />
    </>
  );
}

import type { DayReview } from '../../domain/day/review-day';
import { TurnNotes } from '../settle/turn-notes';
import { DayCorrections } from './day-corrections';
import { DayHead } from './day-head';
import { DayLedger } from './day-ledger';
import { DayLostTime } from './day-lost-time';
import { DayPicture } from './day-picture';
import { DayPutRight } from './day-put-right';
import { DaySheet } from './day-sheet';
import { DayToSettle } from './day-to-settle';
import { useOpenTurns } from './use-open-turns';
import { useTurnsOfDay } from './use-turns-of-day';
import type { Working } from './working';

interface Props {
  readonly day: DayReview;
  readonly days: readonly DayReview[];
  readonly open: (working: Working) => void;
}

/** One day: what it was in words, its parts beside their targets, what was lost, and what is to be settled. */
export function OneDay({ day, days, open }: Props) {
  const turns = useTurnsOfDay(day.day);
  const openTurns = useOpenTurns(turns);
  const questions = openTurns.reduce((sum, { doubts }) => sum + doubts.length, 0);
  const hasParts = day.parts.length > 0;
  return (
    <>
      <DayHead day={day} days={days} questions={questions} />
      {hasParts && <DayPicture day={day} />}
      {hasParts && <DaySheet day={day} open={open} />}
      {day.elapsedMs > 0 && (
        <div class="review-time">
          <DayLostTime day={day} open={open} />
          <DayLedger day={day} open={open} />
        </div>
      )}
      <DayToSettle open={openTurns} />
      <TurnNotes turns={turns.map(({ turn }) => turn)} />
      <DayPutRight key={day.day} day={day.day} turns={turns.map(({ turn }) => turn)} />
      <DayCorrections corrections={turns.flatMap(({ corrections }) => corrections)} />
    </>
  );
}

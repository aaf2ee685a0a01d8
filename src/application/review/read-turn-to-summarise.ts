import { absorbedTime } from '../../domain/day/absorbed-time';
import type { BreakStretch } from '../../domain/day/attended-spans';
import type { TurnToSummarise } from '../../domain/day/summarise-day';
import type { LogRecord } from '../../domain/records/log-record';
import { calendarAt } from '../../domain/shop/calendar-at';
import { isMeal } from '../../domain/shop/is-meal';
import type { ShiftCalendar } from '../../domain/shop/shift-calendar';
import { shiftPlan } from '../../domain/shop/shift-plan';
import { foldAnyTurn } from '../../domain/turn/fold-any-turn';
import type { Turn } from '../../domain/turn/turn';
import type { Bench } from '../bench';

/** A turn with what a summary needs. The turn in hand is the bench's, which knows its last tap before the log does. */
export async function readTurnToSummarise(bench: Bench, id: string): Promise<TurnToSummarise> {
  const records = await bench.log.readStream(id);
  const inHand = bench.turn.peek();
  const turn = inHand?.id === id ? inHand : foldAnyTurn(records);
  return {
    turn,
    absorbedMs: absorbedTime(records),
    breaks: withMealsTold(
      breaksOf(turn, calendarAt(bench.shop.peek(), turn.startedAt.wallMs)),
      records[0]?.fact,
    ),
  };
}

/** The breaks that were planned when the turn began; of a turn that knows none, those of the calendar of its time. */
function breaksOf({ planned, startedAt }: Turn, calendar: ShiftCalendar | null): readonly BreakStretch[] {
  if (planned.breaks.length > 0 || !calendar) return planned.breaks;
  const { wallMs } = startedAt;
  return shiftPlan(calendar, startedAt).breaks.map(({ fromWallMs, toWallMs, ...counted }) => ({
    ...counted,
    fromMs: fromWallMs - wallMs,
    toMs: toWallMs - wallMs,
  }));
}

/** A turn that was entered later says itself where its meals lay, as whoever entered it was shown: no other calendar does. */
function withMealsTold(
  breaks: readonly BreakStretch[],
  start: LogRecord['fact'] | undefined,
): readonly BreakStretch[] {
  const stops = start?.kind === 'turn-started' ? (start.enteredLater?.stops ?? []) : [];
  const meals = stops.flatMap(({ fromMs, lostMs }) =>
    fromMs === undefined ? [] : [{ fromMs, toMs: fromMs + lostMs, isAttended: false }],
  );
  if (meals.length === 0) return breaks;
  return [...breaks.filter((each) => !isMeal(each, each.toMs - each.fromMs)), ...meals];
}

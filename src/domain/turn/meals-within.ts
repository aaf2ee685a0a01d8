import type { EnteredStop } from '../records/station-fact';
import { isMeal } from '../shop/is-meal';
import type { ShiftCalendar } from '../shop/shift-calendar';
import { shiftPlan } from '../shop/shift-plan';
import { offsetMin } from '../shop/wall-time';
import type { TurnSpan } from './turn-span';

/** The meal breaks that the calendar has in a turn that is being entered: nobody works in them, and they are no stoppage. */
export function mealsWithin(
  calendar: ShiftCalendar | null,
  { fromWallMs, toWallMs }: Pick<TurnSpan, 'fromWallMs' | 'toWallMs'>,
  zone: string,
): EnteredStop[] {
  if (!calendar) return [];
  const startedAt = {
    run: '',
    monoMs: 0,
    wallMs: fromWallMs,
    zone,
    offsetMin: offsetMin(fromWallMs, zone),
  };
  return shiftPlan(calendar, startedAt)
    .breaks.filter((each) => isMeal(each, each.toWallMs - each.fromWallMs))
    .map((each) => {
      const begin = Math.max(each.fromWallMs, fromWallMs);
      const lostMs = Math.min(each.toWallMs, toWallMs) - begin;
      return {
        category: 'planned-break',
        reason: 'break',
        label: '',
        lostMs,
        fromMs: begin - fromWallMs,
      } as const;
    })
    .filter(({ lostMs }) => lostMs > 0);
}

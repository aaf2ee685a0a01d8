import type { ShiftCalendar } from './shift-calendar';
import type { Shop } from './shop';

/** The calendar that held at a moment of the wall clock; null before the shop had one. A later one changes nothing past. */
export function calendarAt({ calendars }: Pick<Shop, 'calendars'>, wallMs: number): ShiftCalendar | null {
  return calendars.findLast(({ sinceWallMs }) => sinceWallMs <= wallMs)?.calendar ?? null;
}

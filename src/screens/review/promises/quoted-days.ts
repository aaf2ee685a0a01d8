import type { DayMinute } from '../../../domain/day/day-minute';
import type { QuotedDays } from '../../../domain/records/review-fact';
import type { ShiftCalendar } from '../../../domain/shop/shift-calendar';
import { finishDay } from '../../../domain/weeks/finish-day';
import type { QuotedTime } from '../../../domain/weeks/quote-time';
import { parseDecimal } from '../../../i18n/parse-number';
import type { OrderTyped } from './order-in-hand';

/** By when an order is done, as it is quoted; null while day or people cannot be read, or nobody works. */
export function quotedDays(
  calendar: ShiftCalendar | null,
  { freeFrom, people: typed }: Pick<OrderTyped, 'freeFrom' | 'people'>,
  { totalMs, highMs }: Pick<QuotedTime, 'totalMs' | 'highMs'>,
  now: DayMinute,
): QuotedDays | null {
  const people = parseDecimal(typed) ?? 0;
  if (people === 0) return null;
  const finish = finishDay(calendar, { freeFrom, people, neededMs: totalMs }, now);
  if (finish === null) return null;
  const latest = highMs === null ? null : finishDay(calendar, { freeFrom, people, neededMs: highMs }, now);
  return { freeFrom, people, finish, latest };
}

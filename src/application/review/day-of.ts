import type { Stamp } from '../../domain/records/stamp';
import { calendarAt } from '../../domain/shop/calendar-at';
import { shopDay } from '../../domain/shop/shop-day';
import type { Bench } from '../bench';

/** The day that a moment counts for in this shop: a night shift is one day. */
export function dayOf(bench: Bench, moment: Stamp): string {
  return shopDay(calendarAt(bench.shop.peek(), moment.wallMs), moment);
}

import { expect, it } from 'vitest';
import { calendarAt } from '../../../src/domain/shop/calendar-at';
import { foldShop } from '../../../src/domain/shop/fold-shop';
import type { ShiftCalendar } from '../../../src/domain/shop/shift-calendar';
import { recordAt } from '../../support/records';

const until = (toMin: number): ShiftCalendar => ({
  shifts: [{ name: 'day', weekdays: [1, 2, 3, 4, 5], fromMin: 420, toMin, breaks: [] }],
  exceptions: [],
});
const set = (sequence: number, wallMs: number, calendar: ShiftCalendar) => {
  const record = recordAt(sequence, 0, 'shop', { kind: 'calendar-set', calendar });
  return { ...record, stamp: { ...record.stamp, wallMs } };
};

it('is the calendar that held at that moment: none before the first, and no later one', () => {
  const shop = foldShop([set(1, 1_000, until(900)), set(2, 5_000, until(930))]);
  const endAt = (wallMs: number) => calendarAt(shop, wallMs)?.shifts[0]?.toMin ?? null;
  expect([999, 1_000, 4_999, 5_000, 9_000].map(endAt)).toEqual([null, 900, 900, 930, 930]);
  expect(shop.calendar).toEqual(until(930));
});

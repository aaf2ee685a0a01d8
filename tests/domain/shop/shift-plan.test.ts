import { describe, expect, it } from 'vitest';
import { shiftAt } from '../../../src/domain/shop/shift-at';
import type { ShiftCalendar } from '../../../src/domain/shop/shift-calendar';
import { shiftPlan } from '../../../src/domain/shop/shift-plan';
import { shopDay } from '../../../src/domain/shop/shop-day';
import { offsetMin, wallTime } from '../../../src/domain/shop/wall-time';

const zone = 'Europe/Berlin';
const minutes = (clock: string) => {
  const [hours, rest] = clock.split(':').map(Number) as [number, number];
  return hours * 60 + rest;
};
const stretch = (text: string) => {
  const [from, to] = text.split('-').map(minutes) as [number, number];
  return { fromMin: from, toMin: to };
};
const weekly = (name: string, weekdays: number[], times: string, ...breaks: string[]) => ({
  name,
  weekdays,
  ...stretch(times),
  breaks: breaks.map(stretch),
});
const weekdays = [1, 2, 3, 4, 5];

/** An early, a late and a night shift; on Christmas Eve half a day, on Christmas Day nothing. */
const calendar: ShiftCalendar = {
  shifts: [
    weekly('early', weekdays, '06:00-14:00', '09:00-09:15', '11:30-12:00'),
    weekly('late', weekdays, '14:00-22:00', '18:00-18:30'),
    weekly('night', weekdays, '22:00-06:00', '02:00-02:30', '23:45-00:15'),
  ],
  exceptions: [
    { day: '2026-12-24', shifts: [{ ...stretch('06:00-12:00'), breaks: [stretch('09:00-09:15')] }] },
    { day: '2026-12-25', shifts: [] },
  ],
};

const moment = (day: string, clock: string) => {
  const wallMs = wallTime(day, minutes(clock), zone);
  return { run: 'run-1', monoMs: 0, wallMs, zone, offsetMin: offsetMin(wallMs, zone) };
};
const clockOf = (wallMs: number) =>
  new Date(wallMs + offsetMin(wallMs, zone) * 60_000).toISOString().slice(8, 16).replace('T', ' ');
const breaksFrom = (day: string, clock: string, of = calendar) =>
  shiftPlan(of, moment(day, clock)).breaks.map(
    ({ fromWallMs, toWallMs }) => `${clockOf(fromWallMs)}-${clockOf(toWallMs).slice(3)}`,
  );
const endFrom = (day: string, clock: string) => {
  const { endsWallMs } = shiftPlan(calendar, moment(day, clock));
  return endsWallMs === null ? null : clockOf(endsWallMs);
};

describe('the shift of a moment', () => {
  it('is the one that runs, or that begins within the hour when that is nearer', () => {
    const begin = (clock: string) => clockOf(shiftAt(calendar, moment('2026-03-02', clock))!.fromWallMs);
    expect(begin('08:00')).toBe('02 06:00');
    expect(begin('13:20')).toBe('02 14:00');
    expect(begin('12:50')).toBe('02 06:00');
    expect(begin('05:30')).toBe('02 06:00');
    expect(begin('23:59')).toBe('02 22:00');
  });

  it('is none on a day off, none before the hour, and none from its end on', () => {
    expect(shiftAt(calendar, moment('2026-03-07', '10:00'))).toBeNull();
    expect(shiftAt(calendar, moment('2026-03-02', '04:59'))).toBeNull();
    expect(shiftAt(calendar, moment('2026-12-24', '12:00'))).toBeNull();
    expect(shiftAt(calendar, moment('2026-12-24', '11:59'))).not.toBeNull();
  });

  it('counts for the day on which it begins, also past midnight', () => {
    expect(shopDay(calendar, moment('2026-03-03', '01:30'))).toBe('2026-03-02');
    expect(shopDay(calendar, moment('2026-03-03', '05:50'))).toBe('2026-03-03');
    expect(shopDay(calendar, moment('2026-03-07', '05:00'))).toBe('2026-03-06');
    expect(shopDay(calendar, moment('2026-03-07', '06:00'))).toBe('2026-03-07');
    expect(shopDay(null, moment('2026-03-03', '01:30'))).toBe('2026-03-03');
  });

  it('counts for the day of the wall clock where no shift comes near midnight, or the zone is not known', () => {
    const day: ShiftCalendar = { shifts: [weekly('day', weekdays, '07:00-15:30')], exceptions: [] };
    expect(shopDay(day, moment('2026-03-03', '07:30'))).toBe('2026-03-03');
    const early: ShiftCalendar = { shifts: [weekly('early', weekdays, '00:30-08:00')], exceptions: [] };
    expect(shopDay(early, moment('2026-03-02', '23:45'))).toBe('2026-03-03');
    const nowhere = { ...moment('2026-03-03', '01:30'), zone: 'Nowhere/Land' };
    expect(shopDay(calendar, nowhere)).toBe('2026-03-03');
    expect(shiftPlan(calendar, nowhere)).toEqual({ breaks: [], endsWallMs: null });
  });
});

describe('what is planned for a turn', () => {
  it('has the breaks ahead of it, of its own shift and of those that follow within a day', () => {
    expect(breaksFrom('2026-03-02', '06:00')).toEqual([
      '02 09:00-09:15',
      '02 11:30-12:00',
      '02 18:00-18:30',
      '02 23:45-00:15',
      '03 02:00-02:30',
    ]);
    expect(breaksFrom('2026-03-06', '11:45')).toEqual([
      '06 11:30-12:00',
      '06 18:00-18:30',
      '06 23:45-00:15',
      '07 02:00-02:30',
    ]);
    expect(endFrom('2026-03-02', '06:00')).toBe('02 14:00');
  });

  it('leaves another shift’s breaks out while the own one runs', () => {
    const staggered: ShiftCalendar = {
      shifts: [
        weekly('first', weekdays, '07:00-15:00', '09:00-09:15'),
        weekly('second', weekdays, '10:00-18:00', '12:00-12:30', '13:30-13:45'),
      ],
      exceptions: [],
    };
    expect(breaksFrom('2026-03-06', '07:00', staggered)).toEqual(['06 09:00-09:15']);
    expect(breaksFrom('2026-03-06', '10:05', staggered)).toEqual(['06 12:00-12:30', '06 13:30-13:45']);
  });

  it('is what the exception of the day says, and nothing on a closed day', () => {
    expect(breaksFrom('2026-12-24', '06:00')).toEqual(['24 09:00-09:15']);
    expect(endFrom('2026-12-24', '06:00')).toBe('24 12:00');
    expect(breaksFrom('2026-12-25', '08:00')).toEqual([]);
    expect(endFrom('2026-12-25', '08:00')).toBeNull();
  });

  it('follows the wall clock through the change of clocks, and makes that night an hour shorter', () => {
    const night: ShiftCalendar = {
      shifts: [weekly('night', [6], '22:00-06:00', '01:00-01:30', '04:00-04:30')],
      exceptions: [],
    };
    const { breaks } = shiftPlan(night, moment('2026-03-28', '22:00'));
    expect(breaks.map(({ fromWallMs }) => new Date(fromWallMs).toISOString())).toEqual([
      '2026-03-29T00:00:00.000Z',
      '2026-03-29T02:00:00.000Z',
    ]);
  });

  it('drops a break that lies outside of its shift, and one that overlaps the one before it', () => {
    const odd: ShiftCalendar = {
      shifts: [weekly('odd', [5], '06:00-14:00', '09:00-09:30', '09:20-09:40', '13:50-14:10')],
      exceptions: [],
    };
    expect(breaksFrom('2026-03-06', '06:00', odd)).toEqual(['06 09:00-09:30']);
  });
});

import { describe, expect, it } from 'vitest';
import { clockOfMinute, minuteOfClock } from '../../../src/domain/shop/clock-minute';

describe('a minute of the day', () => {
  it('is written as the clock shows it, and read again', () => {
    for (let minute = 0; minute < 1_440; minute += 1)
      expect(minuteOfClock(clockOfMinute(minute))).toBe(minute);
    expect([clockOfMinute(0), clockOfMinute(555), clockOfMinute(1_439)]).toEqual(['00:00', '09:15', '23:59']);
  });

  it('may come with seconds, and is none where the clock would not show it', () => {
    expect(minuteOfClock('09:15:30')).toBe(555);
    for (const text of ['', '9:15', '24:00', '09:60', 'noon', '12:345'])
      expect(minuteOfClock(text)).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { dayParts, formatDay } from '../../src/i18n/format-day';
import { roundedClockFace } from '../../src/i18n/rounded-clock-face';

describe('formatDay', () => {
  it('writes a day in words, whatever zone the tablet is in', () => {
    // 27 March 2026 is a Friday (perpetual calendar).
    expect(formatDay('2026-03-27')).toBe('Fri 27 March 2026');
    expect(formatDay('2026-03-02', 'short')).toBe('2 Mar');
  });

  it('gives the month and the number of a day apart', () => {
    expect(dayParts('2026-03-02')).toEqual({ month: 'March 2026', dayOfMonth: '2' });
  });
});

describe('roundedClockFace', () => {
  it('rounds where a watch would cut', () => {
    expect(roundedClockFace(90_804)).toBe('1:31');
    expect(roundedClockFace(90_499)).toBe('1:30');
    expect(roundedClockFace(59_600)).toBe('1:00');
  });
  it('keeps the tenths of a time below half a minute, and of no longer one', () => {
    expect(roundedClockFace(7_440)).toBe('0:07.4');
    expect(roundedClockFace(7_000)).toBe('0:07.0');
    expect(roundedClockFace(29_940)).toBe('0:29.9');
    expect(roundedClockFace(29_960)).toBe('0:30');
    expect(roundedClockFace(-7_440)).toBe('−0:07.4');
    expect(roundedClockFace(-40)).toBe('0:00.0');
  });
});

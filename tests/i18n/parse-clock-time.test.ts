import { describe, expect, it } from 'vitest';
import { parseClockTime } from '../../src/i18n/parse-clock-time';

describe('a time of day as it is typed', () => {
  it.each([
    ['7', '07:00'],
    ['7:05', '07:05'],
    [' 14.30 ', '14:30'],
    ['705', '07:05'],
    ['1430', '14:30'],
    ['14:30:07', '14:30:07'],
    ['143007', '14:30:07'],
    ['0:00', '00:00'],
    ['23:59:59', '23:59:59'],
  ])('%s is %s', (typed, time) => {
    expect(parseClockTime(typed)).toBe(time);
  });

  it.each(['', '24:00', '12:60', '12:00:60', '7:5', '12:345', '2 pm', '-1', '1:2:3', '12345678'])(
    '%s is none',
    (typed) => {
      expect(parseClockTime(typed)).toBeNull();
    },
  );
});

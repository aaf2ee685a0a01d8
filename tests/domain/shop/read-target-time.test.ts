import { describe, expect, it } from 'vitest';
import { readTargetTime } from '../../../src/domain/shop/read-target-time';

describe('readTargetTime', () => {
  it.each([
    // 1 min 48 s = 108 s; 1.8 min × 60 = 108 s.
    ['1:48', 108_000],
    ['1.8', 108_000],
    ['1,8', 108_000],
    [' 1,80 ', 108_000],
    // 1 h 5 min 30 s = 3,600 + 300 + 30 s.
    ['1:05:30', 3_930_000],
    ['0:45', 45_000],
    // As a time below half a minute is shown: 7 s and 4 tenths.
    ['0:07.4', 7_400],
    ['0:07,4', 7_400],
    ['.5', 30_000],
    ['2', 120_000],
    // 0.0417 min = 2.502 s.
    ['0.0417', 2_502],
    // A day, the longest.
    ['1440', 86_400_000],
  ])('reads %s', (typed, targetMs) => {
    expect(readTargetTime(typed)).toEqual({ ok: true, targetMs });
  });

  it.each([
    ['', 'empty'],
    ['  ', 'empty'],
    ['soon', 'not-a-time'],
    ['-1', 'not-a-time'],
    ['1:8', 'not-a-time'],
    ['1.2.3', 'not-a-time'],
    // A thousands separator and a decimal comma cannot be told apart, so neither is guessed.
    ['1,234.5', 'not-a-time'],
    ['1e3', 'not-a-time'],
    ['Infinity', 'not-a-time'],
    ['1:48:', 'not-a-time'],
    ['0:07.42', 'not-a-time'],
    ['1:75', 'over-59'],
    ['1:60:00', 'over-59'],
    ['0', 'too-short'],
    ['0:00', 'too-short'],
    ['0.01', 'too-short'],
    ['1440.1', 'too-long'],
    ['25:00:00', 'too-long'],
  ])('does not take "%s" (%s)', (typed, fault) => {
    expect(readTargetTime(typed)).toEqual({ ok: false, fault });
  });
});

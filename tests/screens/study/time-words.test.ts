import { describe, expect, it } from 'vitest';
import { timeWords } from '../../../src/screens/study/time-words';
import { convertTime } from '../../../src/statistics/convert-time';

describe('a time on a sheet', () => {
  it('in TMU is the digits that one hundred-thousandth of an hour gives', () => {
    // 1 TMU = 0.00001 h: 0.036 s, and 1 min is 1,666.7 of them (Methods-Time Measurement, 1948).
    expect(timeWords.tmu.reading(36)).toBe('1');
    expect(timeWords.tmu.reading(3_600_000)).toBe('100,000');
    expect(timeWords.tmu.figure(60_000)).toBe('1,666.7');
    expect(timeWords.tmu.fine(1_000)).toBe('27.78 TMU');
    expect(timeWords.tmu.said(90_960)).toBe(`2,526.7 TMU`);
    for (const ms of [1, 499, 59_960, 90_972, 7_234_567]) {
      const exact = convertTime(ms, 'ms', 'tmu');
      expect(Math.abs(Number(timeWords.tmu.fine(ms).replace(/[^\d.]/g, '')) - exact)).toBeLessThanOrEqual(
        0.005001,
      );
    }
  });

  it('in minutes and seconds is rounded before it is split, so that there are never sixty seconds', () => {
    expect(timeWords.clock.reading(59_960)).toBe('1:00.0');
    expect(timeWords.clock.figure(59_994)).toBe('0:59.99');
    expect(timeWords.clock.figure(65_432)).toBe('1:05.43');
    expect(timeWords.clock.said(3_600_000)).toBe('60:00.00 min');
    expect(timeWords.clock.axisText(90)).toBe('1:30');
    expect(timeWords.clock.figure(-1)).toBe('0:00.00');
  });

  it('in decimal minutes and in seconds is what it was', () => {
    expect(timeWords.min.reading(65_432)).toBe('1.09');
    expect(timeWords.min.said(65_432)).toBe('1.091 min');
    expect(timeWords.min.axisText(0.5)).toBe('0.50');
    expect(timeWords.s.fine(65_432)).toBe('65.432 s');
    expect(timeWords.s.axisText(20)).toBe('20');
  });
});

import { describe, expect, it } from 'vitest';
import { decimalMinutes, decimalSeconds } from '../../src/i18n/decimal-time';
import { clockFace } from '../../src/i18n/format-duration';
import { formatNumber } from '../../src/i18n/format-number';

describe('clockFace', () => {
  it('cuts to whole seconds, as a watch does', () => {
    expect(clockFace(107_999)).toBe('1:47');
    expect(clockFace(108_000)).toBe('1:48');
  });
  it('shows hours from one hour on', () => {
    expect(clockFace(3_599_000)).toBe('59:59');
    expect(clockFace(3_725_000)).toBe('1:02:05');
  });
  it('gives a negative time a true minus sign, and a part of a second none', () => {
    expect(clockFace(-65_000)).toBe('−1:05');
    expect(clockFace(-400)).toBe('0:00');
  });
});

describe('decimal times', () => {
  it('turns 108 s into 1.80 minutes: a hundredth of a minute is 0.6 s', () => {
    expect(decimalMinutes(108_000)).toBe('1.80');
    expect(decimalMinutes(600, 2)).toBe('0.01');
    expect(decimalSeconds(108_040)).toBe('108.0');
  });
});

describe('formatNumber', () => {
  it('never shows minus nothing', () => {
    expect(formatNumber(-0.004, 2)).toBe('0.00');
    expect(formatNumber(-0.006, 2)).toBe('−0.01');
  });
  it('groups thousands', () => {
    expect(formatNumber(1_234_567)).toBe('1,234,567');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { halfComparison } from '../../src/statistics/half-comparison';
import { badFractions, badReadings, saysRule } from './bad-readings';

const first = [4.1, 4, 3.9, 4, 4.1];

describe('halfComparison', () => {
  it('gives the second half as a multiple of the first: the same readings halved are 0.5', () => {
    const halves = halfComparison([...first, ...first.map((time) => time / 2)]);
    expect(halves).toMatchObject({ tested: true, direction: 'falling' });
    expect(halves.tested && halves.ratio).toBeCloseTo(0.5, 12);
  });

  it('gives 1 and not shown for two halves alike', () => {
    const halves = halfComparison([...first, ...first]);
    expect(halves).toMatchObject({ direction: 'not-shown' });
    expect(halves.tested && halves.ratio).toBeCloseTo(1, 12);
  });

  it('gives the middle of an odd number of readings to neither half', () => {
    const without = halfComparison([...first, ...first.map((time) => time * 1.1)]);
    const withMiddle = halfComparison([...first, 999, ...first.map((time) => time * 1.1)]);
    expect(withMiddle).toEqual(without);
  });

  it('does not change with the unit', () => {
    const times = fc.array(fc.double({ min: 0.1, max: 10, noNaN: true }), { minLength: 10, maxLength: 40 });
    fc.assert(
      fc.property(times, (readings) => {
        const minutes = halfComparison(readings);
        const seconds = halfComparison(readings.map((reading) => reading * 60));
        if (!minutes.tested || !seconds.tested) return;
        expect(seconds.ratio / minutes.ratio).toBeCloseTo(1, 9);
        expect(seconds.upper / minutes.upper).toBeCloseTo(1, 6);
      }),
    );
  });

  it('makes no test below ten readings, nor when neither half has any spread', () => {
    expect(halfComparison([1, 2, 3, 4, 5, 6, 7, 8, 9])).toEqual({
      tested: false,
      reason: 'too-few-readings',
    });
    expect(halfComparison([1])).toEqual({ tested: false, reason: 'too-few-readings' });
    expect(halfComparison(new Array(10).fill(2))).toEqual({ tested: false, reason: 'no-spread' });
    expect(halfComparison([2, 2, 2, 2, 2, 1, 1, 1, 1, 1])).toEqual({ tested: false, reason: 'no-spread' });
  });

  it.each(badReadings)('refuses readings with %s', (_, readings) => {
    expect(() => halfComparison(readings)).toThrow(saysRule('halfComparison'));
  });

  it('refuses a time below zero', () => {
    expect(() => halfComparison([1, 2, 3, 4, 5, 6, 7, 8, 9, -10])).toThrow(
      'halfComparison requires readings above zero',
    );
  });

  it.each(badFractions)('refuses the confidence %s', (confidence) => {
    expect(() => halfComparison([...first, ...first], confidence)).toThrow(saysRule('halfComparison'));
  });
});

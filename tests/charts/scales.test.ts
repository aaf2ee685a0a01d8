import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { everyNth } from '../../src/charts/every-nth';
import { linearScale } from '../../src/charts/linear-scale';
import { roundTicks } from '../../src/charts/round-ticks';
import { spreadApart } from '../../src/charts/spread-apart';
import { fittedText, textWidth } from '../../src/charts/text-width';
import { tickDecimals } from '../../src/charts/tick-decimals';

describe('linearScale', () => {
  it('puts values between its ends in proportion, also upside down', () => {
    expect(linearScale({ low: 0, high: 2, start: 100, end: 500 })(0.5)).toBe(200);
    expect(linearScale({ low: 1, high: 3, start: 300, end: 0 })(2)).toBe(150);
  });

  it('refuses a scale without a length', () => {
    expect(() => linearScale({ low: 1, high: 1, start: 0, end: 1 })).toThrow(
      'linearScale requires a low value below the high one',
    );
    expect(() => linearScale({ low: Number.NaN, high: 1, start: 0, end: 1 })).toThrow(RangeError);
  });
});

describe('roundTicks', () => {
  it.each([
    // 1.9/4 = 0.475: the next of 0.1, 0.2, 0.25, 0.5, 1 is 0.5.
    [0, 1.9, 5, [0, 0.5, 1, 1.5, 2]],
    // 1.5/7 = 0.214: 0.25.
    [0, 1.5, 8, [0, 0.25, 0.5, 0.75, 1, 1.25, 1.5]],
    // 0.3/3 = 0.1 exactly, and 3 × 0.1 is written 0.3.
    [0, 0.3, 4, [0, 0.1, 0.2, 0.3]],
    [92, 108, 4, [90, 100, 110]],
  ])('from %f to %f, at most %i: %j', (low, high, most, ticks) => {
    expect(roundTicks(low, high, most)).toEqual(ticks);
  });

  it('holds both ends between its first and its last tick, in equal steps, with one more than asked at most', () => {
    const anyEnd = fc.double({ min: 0, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(
        anyEnd,
        fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
        fc.integer({ min: 2, max: 12 }),
        (low, span, most) => {
          const ticks = roundTicks(low, low + span, most);
          expect(ticks[0]!).toBeLessThanOrEqual(low + 1e-6 * span);
          expect(ticks.at(-1)!).toBeGreaterThanOrEqual(low + span - 1e-6 * span);
          expect(ticks.length).toBeLessThanOrEqual(most + 1);
          expect(ticks.length).toBeGreaterThan(1);
        },
      ),
      { seed: 7, numRuns: 500 },
    );
  });

  it('refuses ends that are none', () => {
    expect(() => roundTicks(1, 1, 5)).toThrow('roundTicks requires a low value below the high one');
    expect(() => roundTicks(0, Number.POSITIVE_INFINITY, 5)).toThrow(RangeError);
    expect(() => roundTicks(0, 1, 1)).toThrow('roundTicks requires at least two ticks');
  });
});

describe('spreadApart', () => {
  const anywhere = { low: 0, high: 300 };

  it('leaves labels where they belong when they are apart', () => {
    expect(spreadApart([200, 100], 20, anywhere)).toEqual([200, 100]);
  });

  it('moves two that touch apart evenly, and keeps their order', () => {
    // Middle 102, 20 apart: 92 and 112.
    expect(spreadApart([100, 104], 20, anywhere)).toEqual([92, 112]);
    expect(spreadApart([104, 100], 20, anywhere)).toEqual([112, 92]);
  });

  it('keeps them inside the ends', () => {
    expect(spreadApart([299, 300], 20, anywhere)).toEqual([280, 300]);
    expect(spreadApart([0, 1], 20, anywhere)).toEqual([0, 20]);
  });

  it('refuses a distance below nothing', () => {
    expect(() => spreadApart([1], -1, anywhere)).toThrow('spreadApart requires a distance of 0 or more');
  });
});

describe('everyNth', () => {
  it('leaves out as many labels as it takes', () => {
    // 20 px apart, 30 px wide: every second.
    expect(everyNth(20, 30)).toBe(2);
    expect(everyNth(30, 30)).toBe(1);
    expect(everyNth(10, 31)).toBe(4);
    expect(() => everyNth(0, 30)).toThrow('everyNth requires a step above 0');
  });
});

describe('tickDecimals', () => {
  it('are as many as tell two ticks apart, and no more', () => {
    expect(tickDecimals([0, 1, 2])).toBe(0);
    expect(tickDecimals([1, 1.5, 2])).toBe(1);
    expect(tickDecimals([0.065, 0.0675, 0.07])).toBe(4);
    expect(() => tickDecimals([1])).toThrow('tickDecimals requires at least two ticks');
  });

  it('write the ticks of any axis so that each reads as itself', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 500, noNaN: true }),
        fc.double({ min: 1.01, max: 3, noNaN: true }),
        (low, times) => {
          const ticks = roundTicks(low, low * times, 6);
          const texts = ticks.map((tick) => tick.toFixed(tickDecimals(ticks)));
          expect(texts.map(Number)).toEqual(ticks.map((tick) => Number(tick.toPrecision(10))));
        },
      ),
      { seed: 7, numRuns: 500 },
    );
  });
});

describe('fittedText', () => {
  it('keeps a text that fits, and cuts one that does not with an ellipsis', () => {
    expect(fittedText('M', 100, 18)).toBe('M');
    const cut = fittedText('WD-2230V tall, veneered', 100, 18);
    expect(cut.endsWith('…')).toBe(true);
    expect(textWidth(cut, 18)).toBeLessThanOrEqual(100);
  });

  it('cuts between letters, not inside one that takes two code units', () => {
    expect(fittedText('🚪🚪🚪🚪', textWidth('🚪🚪', 18), 18)).toBe('🚪…');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runsTest } from '../../src/statistics/runs-test';
import { badReadings, saysRule } from './bad-readings';

describe('runsTest', () => {
  it('calls a steady climb what it is: two runs, as unlikely as 2 in 252', () => {
    // Five above and five below give 252 orders, 2 of them with two runs; twice that tail.
    const test = runsTest([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(test).toMatchObject({ tested: true, runs: 2, above: 5, below: 5, method: 'exact' });
    expect(test.tested && test.probability).toBeCloseTo(4 / 252, 12);
    expect(test.tested && test.z).toBeLessThan(0);
  });

  it('sees a see-saw as readily as a drift', () => {
    const test = runsTest([1, 9, 1.1, 9.1, 1.2, 9.2, 1.3, 9.3, 1.4, 9.4]);
    expect(test.tested && test.probability).toBeCloseTo(4 / 252, 12);
    expect(test.tested && test.z).toBeGreaterThan(0);
  });

  it('leaves readings on the median out of the count', () => {
    const test = runsTest([1, 5, 2, 5, 3, 5, 7, 5, 8, 5, 9]);
    expect(test).toMatchObject({ above: 3, below: 3, runs: 2 });
  });

  it('adds up to one over all numbers of runs', () => {
    // Doubling the smaller tail must not be possible for a tail above one half: the answer is then 1.
    const middling = runsTest([1, 6, 2, 3, 7, 8, 9, 4, 5, 10]);
    expect(middling.tested && middling.probability).toBeLessThanOrEqual(1);
    expect(middling.tested && middling.probability).toBeGreaterThan(0.5);
  });

  it('is the normal approximation past a thousand readings, where the two differ by under a tenth', () => {
    // 480 of 500 + 500 and 500.5 of 501 + 501 expected runs lie nearly the same number of deviations off.
    const alternate = (half: number, runs: number) => {
      const head = Array.from({ length: runs }, (_, i) => (i % 2 === 0 ? 1 : -1));
      const rest = half - runs / 2;
      return [...new Array(rest).fill(1), ...head, ...new Array(rest).fill(-1)];
    };
    const exact = runsTest(alternate(500, 460));
    const normal = runsTest(alternate(501, 461 + 1));
    expect(exact).toMatchObject({ method: 'exact', runs: 460 });
    expect(normal).toMatchObject({ method: 'normal', runs: 462 });
    if (!exact.tested || !normal.tested) throw new Error('both can be tested');
    expect(normal.probability / exact.probability).toBeGreaterThan(0.9);
    expect(normal.probability / exact.probability).toBeLessThan(1.15);
  });

  it('makes no test below ten readings, nor when none differs', () => {
    expect(runsTest([1, 2, 3, 4, 5, 6, 7, 8, 9])).toEqual({ tested: false, reason: 'too-few-readings' });
    expect(runsTest([7])).toEqual({ tested: false, reason: 'too-few-readings' });
    expect(runsTest(new Array(12).fill(4))).toEqual({ tested: false, reason: 'no-spread' });
    expect(runsTest([4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 9])).toEqual({ tested: false, reason: 'no-spread' });
  });

  it('does not change with the unit, the zero or the direction of time', () => {
    const readings = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 10, maxLength: 90 });
    fc.assert(
      fc.property(readings, fc.integer({ min: 1, max: 9 }), fc.integer({ min: -9, max: 9 }), (x, a, b) => {
        const test = runsTest(x);
        expect(runsTest(x.map((value) => a * value + b))).toEqual(test);
        expect(runsTest([...x].reverse())).toEqual(test);
      }),
    );
  });

  it.each(badReadings)('refuses readings with %s', (_, readings) => {
    expect(() => runsTest(readings)).toThrow(saysRule('runsTest'));
  });
});

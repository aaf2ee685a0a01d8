import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundedCosts } from '../../../src/screens/review/weeks/rounded-costs';

const total = (values: readonly number[]) => Math.round(10 * values.reduce((sum, value) => sum + value, 0));

describe('lost time and its cost in tenths of a minute', () => {
  it('are the same where nothing was absorbed, whatever the other lines are rounded to', () => {
    // 1.94 and 1.06 min are 1.9 and 1.1; as costs by themselves 1.94 and 1.04 would be 2.0 and 1.0.
    const lost = [
      { lostMs: 116_400, costMs: 116_400 },
      { lostMs: 63_600, costMs: 62_400 },
    ];
    expect(roundedCosts(lost).lengths).toEqual([1.9, 1.1]);
    expect(roundedCosts(lost).costs).toEqual([1.9, 1.1]);
  });

  it('never cost more than they lasted or less than nothing, and lengths add up to their rounded sum', () => {
    const line = fc.tuple(fc.nat(9_000_000), fc.constantFrom(1, 1, 1, 0.9, 0));
    fc.assert(
      fc.property(fc.array(line, { maxLength: 8 }), (lines) => {
        const lost = lines.map(([lostMs, share]) => ({ lostMs, costMs: lostMs * share }));
        const { lengths, costs } = roundedCosts(lost);
        for (const [place, cost] of costs.entries()) {
          expect(cost).toBeGreaterThanOrEqual(0);
          expect(cost).toBeLessThanOrEqual(lengths[place]!);
        }
        const lostMs = lost.reduce((sum, each) => sum + each.lostMs, 0);
        expect(total(lengths)).toBe(Math.round(lostMs / 6_000));
      }),
    );
  });
});

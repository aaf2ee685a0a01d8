import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundedCosts } from '../../../src/screens/review/weeks/rounded-costs';

const total = (values: readonly number[]) => Math.round(10 * values.reduce((sum, value) => sum + value, 0));

describe('lost time and its cost in tenths of a minute', () => {
  it('are the same where nothing was absorbed, whatever the other lines are rounded to', () => {
    // By itself the column of costs would round the second line up: 9.9 min in all, of 6.94, 1.95 and 1.00.
    const lost = [
      { lostMs: 416_400, costMs: 416_400 },
      { lostMs: 117_000, costMs: 117_000 },
      { lostMs: 63_000, costMs: 60_000 },
    ];
    const { lengths, costs } = roundedCosts(lost);
    expect(costs.slice(0, 2)).toEqual(lengths.slice(0, 2));
    expect(costs[2]).toBeLessThanOrEqual(lengths[2]!);
  });

  it('never cost more than they lasted or less than nothing, and lengths add up to their rounded sum', () => {
    const line = fc.tuple(fc.nat(9_000_000), fc.double({ min: 0, max: 1, noNaN: true }));
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

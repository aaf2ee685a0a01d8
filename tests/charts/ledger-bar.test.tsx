import { describe, expect, it } from 'vitest';
import { AmountBar } from '../../src/charts/amount-bar';
import { hatchFill, hatchings } from '../../src/charts/hatch-patterns';
import { LedgerBar } from '../../src/charts/ledger-bar';
import { at, drawn, tags } from './drawn';

describe('LedgerBar', () => {
  it('cuts its length in the proportion of the amounts, end to end', () => {
    // 300 + 60 + 40 = 400 over 802 − 2 = 800 px: 600, 120 and 80 px, from 1, 601 and 721.
    const elements = drawn(
      <LedgerBar
        id="l"
        title="Elapsed"
        description="work 300"
        width={802}
        pieces={[
          { name: 'Work', amount: 300, hatching: 'solid' },
          { name: 'Stopped', amount: 60, hatching: 'cross' },
          { name: 'Unaccounted', amount: 40, hatching: 'blank' },
        ]}
      />,
    );
    const bars = tags(elements, 'rect').filter((bar) => at(bar, 'height') === 54);
    expect(bars.map((bar) => [at(bar, 'x'), at(bar, 'width')])).toEqual([
      [1, 600],
      [601, 120],
      [721, 80],
    ]);
    expect(bars.map((bar) => bar.attributes.fill)).toEqual(['var(--ink)', 'url(#l-cross)', 'var(--sheet)']);
  });

  it('draws nothing of nothing', () => {
    const bar = <LedgerBar id="l" title="" description="" width={802} pieces={[]} />;
    expect(drawn(bar)).toEqual([]);
    const zero = [{ name: 'Work', amount: 0, hatching: 'solid' as const }];
    expect(drawn(<LedgerBar id="l" title="" description="" width={802} pieces={zero} />)).toEqual([]);
  });

  it('has as many ways to fill as a ledger has categories, all different', () => {
    expect(new Set(hatchings.map((hatching) => hatchFill('x', hatching))).size).toBe(7);
  });
});

describe('AmountBar', () => {
  const width = (amount: number, most: number) =>
    at(tags(drawn(<AmountBar amount={amount} most={most} width={102} />), 'rect')[0], 'width');

  it('is as long as its share of the longest', () => {
    expect(width(50, 200)).toBe(25);
    expect(width(200, 200)).toBe(100);
  });

  it('is still seen when it is next to nothing, and when all are nothing', () => {
    expect(width(0.01, 200)).toBe(1);
    expect(width(0, 0)).toBe(1);
  });

  it('is an outline where it is neutral', () => {
    const [bar] = tags(drawn(<AmountBar amount={1} most={1} width={102} isNeutral />), 'rect');
    expect(bar?.attributes.fill).toBe('var(--sheet)');
  });
});

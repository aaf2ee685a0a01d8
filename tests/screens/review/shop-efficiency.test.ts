import { describe, expect, it } from 'vitest';
import { shopEfficiency } from '../../../src/screens/review/promises/shop-efficiency';
import { weeks3And4 } from '../../demo/demo-shop';
import { summariesOf } from '../../demo/demo-summaries';

const days = summariesOf(weeks3And4);

describe('the efficiency of a shop', () => {
  it('is no expectation below five days, and what those days gave is told all the same', () => {
    const [day] = days;
    const { mean, gave } = shopEfficiency([day!]);
    expect(mean).toBeNull();
    expect(gave).toBe(((100 * day!.earnedMs) / day!.attendedMs).toFixed(1));
    expect(shopEfficiency(days).mean).not.toBeNull();
    expect(shopEfficiency([])).toMatchObject({ efficiencies: [], mean: null });
  });
});

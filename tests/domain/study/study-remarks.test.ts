import { describe, expect, it } from 'vitest';
import { rareRatings, tooShortByHand, unfairMeanRating } from '../../../src/domain/study/study-remarks';
import { summariseStudy } from '../../../src/domain/study/summarise-study';
import { fixtureRows } from './demo-rows';

describe('remarks on a study', () => {
  it('advise to merge the two walks of the invented shop, at the limit of what a hand can time, and nothing else', () => {
    expect(tooShortByHand(summariseStudy(fixtureRows()))).toEqual(['W1 walk to machine', 'W2 walk to bench']);
  });

  it('say nothing about its ratings, which lie between 90 and 115', () => {
    expect(unfairMeanRating(fixtureRows())).toBeNull();
    expect(rareRatings(fixtureRows())).toEqual([]);
  });

  it('tell the mean rating of a study that should be repeated with another operator', () => {
    const fast = fixtureRows().map((row) => (row.work === 'machine' ? row : { ...row, ratingPct: 125 }));
    expect(unfairMeanRating(fast)).toBe(125);
    expect(rareRatings(fast)).toEqual([]);
    expect(rareRatings(fast.map((row, place) => (place === 0 ? { ...row, ratingPct: 130 } : row)))).toEqual([
      'E1 unload to bench',
    ]);
  });
});

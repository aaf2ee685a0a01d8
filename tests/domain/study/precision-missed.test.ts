import { describe, expect, it } from 'vitest';
import { precisionMissed } from '../../../src/domain/study/precision-missed';
import type { RatingsJudged } from '../../../src/domain/study/ratings-judged';

const missed = (sampling: number | null, ratings: RatingsJudged | null = null) =>
  precisionMissed({ sampling, uncertainty: sampling === null ? null : Math.hypot(sampling, 0.05) }, ratings);

describe('a standard is asked about before it is issued', () => {
  it('where nobody can say how precise it is, and as well where it is less precise than aimed at', () => {
    const asked = (sampling: number | null) => missed(sampling);
    expect([null, 0.69, 0.051, 0.05, 0.02].map(asked)).toEqual(['unknown', 'wide', 'wide', null, null]);
  });

  it('where not one of its ratings was judged, and no longer once one was, or where nobody can say', () => {
    expect(missed(0.02, { judged: 0, all: 40 })).toBe('unrated');
    expect(missed(0.02, { judged: 1, all: 40 })).toBeNull();
    expect(missed(0.06, { judged: 0, all: 40 })).toBe('wide');
  });
});

import { describe, expect, it } from 'vitest';
import { precisionMissed } from '../../../src/domain/study/precision-missed';

describe('a standard is asked about before it is issued', () => {
  it('where nobody can say how precise it is, and as well where it is less precise than aimed at', () => {
    const missed = (sampling: number | null) =>
      precisionMissed({ sampling, uncertainty: sampling === null ? null : Math.hypot(sampling, 0.05) });
    expect([null, 0.69, 0.051, 0.05, 0.02].map(missed)).toEqual(['unknown', 'wide', 'wide', null, null]);
  });
});

import { describe, expect, it } from 'vitest';
import { lengthText } from '../../../src/screens/review/length-text';

describe('a length of time in the headline of a day', () => {
  it('has its seconds below ten minutes, so that half a minute is not told as one', () => {
    expect([31_000, 90_000, 599_000].map(lengthText)).toEqual([
      '0:31\u00a0min',
      '1:30\u00a0min',
      '9:59\u00a0min',
    ]);
  });

  it('is in whole minutes from there on', () => {
    expect([600_000, 5_850_000].map(lengthText)).toEqual(['10\u00a0min', '1\u00a0h\u00a038\u00a0min']);
  });
});

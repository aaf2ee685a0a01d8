import { describe, expect, it } from 'vitest';
import { readSpan } from '../../../src/screens/shop/shift-form';

describe('a shift as it is typed', () => {
  it('may end at 24:00, which is midnight of the next day', () => {
    for (const to of ['24:00', '24.00', '2400', '24']) {
      expect(readSpan({ from: '16:00', to })).toEqual({ fromMin: 960, toMin: 0 });
    }
  });

  it('begins at no 24:00, ends at no 24:30, and has a length', () => {
    expect(readSpan({ from: '24:00', to: '08:00' })).toBeNull();
    expect(readSpan({ from: '16:00', to: '24:30' })).toBeNull();
    expect(readSpan({ from: '16:00', to: '16:00' })).toBeNull();
  });
});

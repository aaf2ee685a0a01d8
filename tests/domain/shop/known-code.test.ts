import { describe, expect, it } from 'vitest';
import { isSameCode, knownCode } from '../../../src/domain/shop/known-code';

describe('a code', () => {
  it('is the same in capitals, in small letters and with spaces around it', () => {
    expect(isSameCode('K7', ' k7 ')).toBe(true);
    expect(isSameCode('WD-13a', 'wd-13A')).toBe(true);
    expect(isSameCode('K7', 'K 7')).toBe(false);
  });

  it('is written as the shop writes it, and as it was typed where the shop does not know it', () => {
    expect(knownCode(['M2', 'K7'], 'k7')).toBe('K7');
    expect(knownCode(['M2'], ' k7 ')).toBe('k7');
  });
});

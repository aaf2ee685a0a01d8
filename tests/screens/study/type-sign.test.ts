import { describe, expect, it } from 'vitest';
import { typeSign } from '../../../src/screens/study/paper/type-sign';

describe('a cell of the paper sheet', () => {
  it('that is come back to is written anew by the first sign, and goes on with the next', () => {
    expect(typeSign('0.90', '1', true)).toBe('1');
    expect(typeSign('1', '.', false)).toBe('1.');
    expect(typeSign('0.90', '', true)).toBe('0.9');
  });

  it('has one decimal mark at most', () => {
    expect(typeSign('0.90', '.', false)).toBe('0.90');
    expect(typeSign('0.90', '.', true)).toBe('.');
  });
});

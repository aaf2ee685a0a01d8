import { describe, expect, it } from 'vitest';
import { sizeQuoted } from '../../../src/screens/review/promises/quoted-part';

describe('a size that is quoted for', () => {
  it('has a name, a time, and how far it may be off', () => {
    expect(sizeQuoted({ code: ' 4.2 m ', time: '1:30', half: '0:05' })).toMatchObject({
      id: '',
      code: '4.2 m',
      standardMs: 90_000,
      standardHalfMs: 5_000,
    });
    expect(sizeQuoted({ code: '4.2 m', time: '1:30', half: '' })!.standardHalfMs).toBe(0);
  });

  it('is none yet while any of it cannot be read', () => {
    expect(sizeQuoted({ code: '', time: '1:30', half: '' })).toBeNull();
    expect(sizeQuoted({ code: 'x', time: 'soon', half: '' })).toBeNull();
    expect(sizeQuoted({ code: 'x', time: '1:30', half: 'little' })).toBeNull();
  });
});

import { crc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checksum } from '../../../src/domain/records/checksum';

describe('checksum', () => {
  it('is CRC-32: cbf43926 for the nine digits, the check value of the standard (ITU-T V.42)', () => {
    expect(checksum('123456789')).toBe(0xcbf43926);
  });

  it('agrees with an independent implementation on any text', () => {
    const bytes = (text: string) => new TextEncoder().encode(text);
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(checksum(text)).toBe(crc32(bytes(text)));
      }),
      { numRuns: 5_000 },
    );
  });

  it('goes on from an earlier text as if both were one', () => {
    expect(checksum('6789', checksum('12345'))).toBe(checksum('123456789'));
  });
});

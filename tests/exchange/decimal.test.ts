import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDecimal } from '../../src/exchange/read-decimal';
import { writeDecimal } from '../../src/exchange/write-decimal';

describe('seconds in a cell and milliseconds in a record', () => {
  // By definition, 1 s = 1000 ms; 0.57 × 1000 and 1.005 × 1000 are the doubles that multiplying gets wrong.
  it.each([
    ['0.57', 570],
    ['1.005', 1005],
    ['0.0005', 0.5],
    ['3600', 3_600_000],
    ['.5', 500],
    ['5.', 5000],
    ['1.2e1', 12_000],
    ['+7', 7000],
    [' 8 ', 8000],
    ['-0', 0],
  ])('%s s are %d ms', (text, ms) => {
    expect(readDecimal(text, '.', 3)).toBe(ms);
  });

  it.each([
    [570, '0.57'],
    [1005, '1.005'],
    [0, '0'],
    [1, '0.001'],
    [0.5, '0.0005'],
    [120_000, '120'],
    [1e21, '1000000000000000000'],
    [1e-7, '0.0000000001'],
  ])('%d ms are written as %s s', (ms, text) => {
    expect(writeDecimal(ms, '.', -3)).toBe(text);
  });

  it('writes no more digits than the number needs: 0.1 + 0.2 has seventeen of them', () => {
    // The shortest decimal of a double, ECMAScript Number::toString.
    expect(writeDecimal(0.1 + 0.2)).toBe('0.30000000000000004');
    expect(writeDecimal(85.2)).toBe('85.2');
  });

  it('comes back to the same double for 20,000 numbers, with a point and with a comma', () => {
    const number = fc
      .double({ noNaN: true, noDefaultInfinity: true, min: -1e12, max: 1e12 })
      .map((x) => x + 0);
    fc.assert(
      fc.property(number, fc.constantFrom('.' as const, ',' as const), (value, mark) => {
        const text = writeDecimal(value, mark, -3);
        expect(text).toMatch(mark === '.' ? /^-?\d+(\.\d*[1-9])?$/ : /^-?\d+(,\d*[1-9])?$/);
        expect(readDecimal(text, mark, 3)).toBe(value);
      }),
      { numRuns: 20_000 },
    );
  });

  it.each(['', 'twelve', '1,5', '1.2.3', '0x10', 'Infinity', 'NaN', '1e999', '--1', '1 000', '12 s', '1e'])(
    'takes %j for no number',
    (text) => {
      expect(readDecimal(text, '.')).toBeNull();
    },
  );

  it('takes a point for no number where decimals have a comma: 1.500 is 1500 to half of Europe', () => {
    expect(readDecimal('1.500', ',')).toBeNull();
    expect(readDecimal('1,500', ',')).toBe(1.5);
  });

  it('is refused for a number that is none', () => {
    expect(() => writeDecimal(Number.NaN)).toThrow(new RangeError('writeDecimal requires a finite number'));
  });
});

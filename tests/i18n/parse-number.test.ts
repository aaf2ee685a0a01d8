import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { beforeEach, describe, expect, it, vi } from 'vitest';

/** The reading and writing of numbers in a page that speaks this language. */
async function inLocale(locale: string) {
  vi.resetModules();
  const { speak } = await import('../../src/i18n/spoken');
  speak(() => undefined, locale);
  const { formatNumber } = await import('../../src/i18n/format-number');
  return { formatNumber, ...(await import('../../src/i18n/parse-number')) };
}

beforeEach(() => vi.resetModules());

describe.each(['en-GB', 'de-DE', 'es-ES', 'he-IL'])('in %s a typed number', (locale) => {
  it('has a decimal comma or a decimal point, wherever only one can be meant', async () => {
    const { parseNumber } = await inLocale(locale);
    const same = [
      '1,5',
      '1.5',
      '12,25',
      '12.25',
      '0,123',
      '0.123',
      '1234,567',
      '1234.567',
      ',5',
      '.5',
      '7,',
      '7.',
    ];
    expect(same.map(parseNumber)).toEqual([
      1.5, 1.5, 12.25, 12.25, 0.123, 0.123, 1234.567, 1234.567, 0.5, 0.5, 7, 7,
    ]);
  });

  it('may be in groups of three', async () => {
    const { parseNumber } = await inLocale(locale);
    const grouped = ['1,234.5', '1.234,5', '1,234,567', '1.234.567', '1 234 567', '1 234,5', '1234'];
    expect(grouped.map(parseNumber)).toEqual([1234.5, 1234.5, 1234567, 1234567, 1234567, 1234.5, 1234]);
  });

  it('is refused when it is none', async () => {
    const { parseNumber } = await inLocale(locale);
    const none = [
      '',
      ' ',
      '.',
      ',',
      'x',
      '1x',
      '-1',
      '−1',
      '1e3',
      'NaN',
      '1,2,3',
      '1.2.3',
      '1,23,456',
      '12,34.5',
      '1..5',
    ];
    expect(none.concat(['0,123,456', '1 2', '1,234.567.8', '½', '١']).map(parseNumber)).toEqual(
      Array(none.length + 5).fill(null),
    );
  });

  it('comes back from its own field, whatever it is', async () => {
    const { asTyped, parseNumber } = await inLocale(locale);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), fc.integer({ min: 0, max: 4 }), (digits, places) => {
        const value = Number(`${digits}e-${places}`);
        return parseNumber(asTyped(value)) === value;
      }),
    );
  });

  it('is read as it is printed', async () => {
    const { formatNumber, parseNumber } = await inLocale(locale);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), fc.integer({ min: 0, max: 4 }), (digits, places) => {
        const value = Number(`${digits}e-${places}`);
        return parseNumber(formatNumber(value, places)) === value;
      }),
    );
  });

  it('of minutes, hours or per cent has decimals after a mark that stands alone', async () => {
    const { parseDecimal } = await inLocale(locale);
    expect(['1,234', '1.234', '0.571', '1.234,5', 'x'].map(parseDecimal)).toEqual([
      1.234,
      1.234,
      0.571,
      1234.5,
      null,
    ]);
  });

  it('that counts has none, so that three digits after a mark are thousands', async () => {
    const { parseWhole } = await inLocale(locale);
    expect(
      ['250', '1,234', '1.234', '1 234', '1.5', '1,50', '12,', '1e3', '', '99999999999999999'].map(
        parseWhole,
      ),
    ).toEqual([250, 1234, 1234, 1234, null, null, null, null, null, null]);
  });
});

describe('the one number that can be meant in two ways', () => {
  it.each([
    ['en-GB', 1234, 1.234],
    ['de-DE', 1.234, 1234],
    ['es-ES', 1.234, 1234],
  ])('is read by the rule of %s', async (locale, comma, point) => {
    const { parseNumber } = await inLocale(locale);
    expect(['1,234', '1.234'].map(parseNumber)).toEqual([comma, point]);
  });
});

describe('a screen', () => {
  it('leaves the reading of commas and points to one place', () => {
    const screens = fileURLToPath(new URL('../../src/screens', import.meta.url));
    const own = readdirSync(screens, { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.tsx?$/.test(file))
      .filter((file) => /replace\(','|parseFloat/.test(readFileSync(path.join(screens, file), 'utf8')));
    expect(own).toEqual([]);
  });
});

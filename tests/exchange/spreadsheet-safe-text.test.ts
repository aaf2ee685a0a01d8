import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spreadsheetSafeText, textFromSpreadsheet } from '../../src/exchange/spreadsheet-safe-text';

// Signs that begin a formula: OWASP, CSV Injection; full-width forms are what Japanese keyboards send.
const signs = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'];
const blanks = ['', ' ', '   ', '\u00A0', '\u200B', '\uFEFF', '\u3000'];

describe('spreadsheetSafeText', () => {
  it.each(signs)('puts an apostrophe before %j, also behind blanks and marks that cannot be seen', (sign) => {
    for (const blank of blanks) {
      expect(spreadsheetSafeText(`${blank}${sign}1+1`)).toBe(`'${blank}${sign}1+1`);
    }
  });

  it.each(['Load', '', "operator's side", "'tis", '1-2', 'a=b', '100 %', ' plain'])(
    'leaves %j as it is, and so does the way back',
    (text) => {
      expect(spreadsheetSafeText(text)).toBe(text);
      expect(textFromSpreadsheet(text)).toBe(text);
    },
  );

  it('gives a text back that had the apostrophe before', () => {
    expect(spreadsheetSafeText("'=1")).toBe("''=1");
    expect(textFromSpreadsheet("''=1")).toBe("'=1");
  });

  it('gives 100,000 hostile texts back exactly, and leaves none that begins with a sign', () => {
    const hostile = fc
      .array(fc.constantFrom(...signs, ...blanks, "'", '"', ',', ';', '\r\n', 'cmd|', 'a', '1'), {
        maxLength: 8,
      })
      .map((pieces) => pieces.join(''));
    fc.assert(
      fc.property(fc.oneof(hostile, fc.string({ unit: 'binary' })), (text) => {
        const safe = spreadsheetSafeText(text);
        expect(textFromSpreadsheet(safe)).toBe(text);
        expect(signs).not.toContain(safe.trimStart()[0]);
      }),
      { numRuns: 100_000 },
    );
  });
});

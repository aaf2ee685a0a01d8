import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync(new URL('../../../src/screens/shell/base.css', import.meta.url), 'utf8');

/** The tokens of one block of the style sheet, by name. */
function tokens(selector: string): Map<string, string> {
  const start = css.indexOf(`${selector} {`);
  const block = css.slice(start, css.indexOf('}', start));
  return new Map([...block.matchAll(/--([a-z-]+): ([^;]+);/g)].map(([, name, value]) => [name!, value!]));
}

const paper = tokens(':root');
const themes = {
  paper,
  sun: new Map([...paper, ...tokens(':root[data-theme="sun"]')]),
  dim: new Map([...paper, ...tokens(':root[data-theme="dim"]')]),
};

function luminance(theme: Map<string, string>, name: string): number {
  const value = theme.get(name)!;
  const other = /^var\(--([a-z-]+)\)$/.exec(value);
  if (other) return luminance(theme, other[1]!);
  expect(value).toMatch(/^#[0-9a-f]{6}$/);
  const [red, green, blue] = [1, 3, 5].map((from) => {
    const share = Number.parseInt(value.slice(from, from + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

/** WCAG 2.2: (lighter + 0.05) / (darker + 0.05). */
function contrast(theme: Map<string, string>, one: string, other: string): number {
  const [darker, lighter] = [luminance(theme, one), luminance(theme, other)].sort((a, b) => a - b);
  return (lighter! + 0.05) / (darker! + 0.05);
}

for (const [name, theme] of Object.entries(themes)) {
  describe(`the ${name} theme`, () => {
    it('has main digits and the labels of main buttons at 12:1 or more', () => {
      expect(contrast(theme, 'ink', 'paper')).toBeGreaterThanOrEqual(12);
      expect(contrast(theme, 'ink', 'sheet')).toBeGreaterThanOrEqual(12);
      expect(contrast(theme, 'on-surface', 'surface')).toBeGreaterThanOrEqual(12);
    });

    it('has all other text at 7:1 or more, on whatever it stands', () => {
      for (const ground of ['paper', 'sheet', 'shade']) {
        for (const text of ['ink', 'quiet', 'ahead', 'behind']) {
          expect([text, ground, contrast(theme, text, ground) >= 7]).toEqual([text, ground, true]);
        }
      }
      for (const ground of ['fault', 'strip', 'strip-light']) {
        expect([ground, contrast(theme, 'ink', ground) >= 7]).toEqual([ground, true]);
      }
      expect(contrast(theme, 'on-not-saved', 'not-saved')).toBeGreaterThanOrEqual(7);
      expect(contrast(theme, 'on-surface', 'pressed')).toBeGreaterThanOrEqual(7);
    });

    it('has borders of what can be touched, the focus, and the red of “not saved” at 3:1 or more', () => {
      for (const edge of ['rule-strong', 'focus', 'not-saved']) {
        expect([edge, contrast(theme, edge, 'paper') >= 3]).toEqual([edge, true]);
      }
    });
  });
}

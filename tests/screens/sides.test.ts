import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const src = fileURLToPath(new URL('../../src', import.meta.url));

/** Sides that stay where they are, whichever way the words run; each with its reason. */
const allowed = [
  // Figures stand under each other by their last digit.
  /text-align: right/,
  // What lies over the side of a hand, and the bar on which time runs.
  /^screens\/shell\/app-shell\.css: border-(left|right)/,
  /^screens\/pace\/turn-figures\.css: margin-left: -2px/,
  // A legend as wide as its group.
  /float: left/,
  // A grid ruled on all four sides: two by the table, two by its cells.
  /^screens\/study\/study-paper\.css: border-width: (1px 0 0 1px|0 1px 1px 0)/,
  // A page of its own, in English.
  /^public\/rescue\.css/,
];

/** Declarations that name a side of the page instead of a side of the words. */
function sides(text: string): string[] {
  const declarations = text.replace(/\/\*[\s\S]*?\*\//g, '').match(/[\w-]+:[^;{}]+(?=;)/g) ?? [];
  return declarations.filter((each) => {
    const [name, value] = [each.slice(0, each.indexOf(':')), each.slice(each.indexOf(':') + 1).trim()];
    const four = /^(?:padding|margin|inset|border-width)$/.test(name) ? value.split(/\s+(?![^(]*\))/) : [];
    return (
      /^(?:(?:scroll-)?(?:margin|padding)|border(?:-top|-bottom)?)-(?:left|right)|^(?:left|right)$/.test(
        name,
      ) ||
      (/^(?:text-align|float|clear)$/.test(name) && /left|right/.test(value)) ||
      (four.length === 4 && four[1] !== four[3])
    );
  });
}

describe('a style', () => {
  it('says on which side of the words something is, not on which side of the page', () => {
    const physical = readdirSync(src, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.css'))
      .flatMap((file) => sides(readFileSync(path.join(src, file), 'utf8')).map((each) => `${file}: ${each}`))
      .filter((each) => !allowed.some((one) => one.test(each)));
    expect(physical).toEqual([]);
  });

  it('would be found out: planted sides are seen, and what has none is not', () => {
    const planted =
      'a { margin-left: 2px; text-align: left; padding: 0 0 4px 24px; border-left: 0; left: 0; }';
    expect(sides(planted)).toHaveLength(5);
    expect(sides('a { margin: 0 2px 4px 2px; text-align: start; inset-inline: 0; }')).toEqual([]);
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';

const top = new URL('../../src', import.meta.url).pathname;
const sheets = readdirSync(top, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.css'))
  .map((file) => ({ file, css: readFileSync(path.join(top, file), 'utf8') }));

it('nothing moves on a screen, but for the mark of a tap, which whoever wants no motion sees without its fading', () => {
  const moving = sheets.filter(({ css }) => /\b(animation|transition|scroll-behavior)\b/.test(css));
  expect(moving.map(({ file }) => file)).toEqual(['screens/pace/turn-controls.css']);
  const [, quiet = ''] = moving[0]!.css.split('@media (prefers-reduced-motion: reduce)');
  expect(quiet).toMatch(/\.pace-flash \{[^}]*animation-timing-function: step-end/);
});

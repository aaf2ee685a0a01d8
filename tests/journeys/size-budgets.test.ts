import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, inject, it } from 'vitest';
import { budgets, sizes } from '../../.config/size.mjs';

describe('what a tablet downloads', () => {
  // Compressing all of it takes seconds: once for every budget.
  const found = sizes(inject('dist'));

  for (const name of ['paceScreen', 'allScripts', 'language', 'kept'] as const) {
    it(`stays within its budget, ${name}: ${budgets[name]} kB in brotli`, () => {
      expect(found[name]).toBeLessThanOrEqual(budgets[name]);
    });
  }

  it('brings no screen with the words of a language, which are read before the first tap', () => {
    const assets = path.join(inject('dist'), 'assets');
    const languages = readdirSync(assets).filter((file) => /^language-.*\.js$/.test(file));
    const brought = languages.flatMap((file) =>
      [...readFileSync(path.join(assets, file), 'utf8').matchAll(/from"\.\/([a-z-]+)-/g)].map(
        ([, name]) => name!,
      ),
    );
    expect(languages).toHaveLength(3);
    expect([...new Set(brought)].sort()).toEqual(['first', 'formats', 'rolldown-runtime']);
  });
});

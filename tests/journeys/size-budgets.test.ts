import { describe, expect, inject, it } from 'vitest';
import { budgets, sizes } from '../../.config/size.mjs';

describe('what a tablet downloads', () => {
  for (const name of ['paceScreen', 'allScripts', 'languages', 'everything'] as const) {
    it(`stays within its budget, ${name}: ${budgets[name]} kB in brotli`, () => {
      expect(sizes(inject('dist'))[name]).toBeLessThanOrEqual(budgets[name]);
    });
  }
});

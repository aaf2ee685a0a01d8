import { describe, expect, it } from 'vitest';
import { importStudies } from '../../../src/application/study/import-studies';
import { readSizedElements } from '../../../src/application/study/read-sized-elements';
import { fixtureRows } from '../../domain/study/demo-rows';
import { openStudy, settled } from '../../domain/study/study-at-the-bench';

describe('elements read on parts of several sizes', () => {
  it('come from all finished studies together, what grows most plainly first', async () => {
    const { bench } = await openStudy();
    const rows = fixtureRows('studies/edge-cleaning-by-size-study');
    // The same times against a number that has nothing to do with them.
    const withChance = rows.map((row, place) => ({
      ...row,
      carried: { ...row.carried, a_number: String(1 + ((place * 5) % 4)) },
    }));
    importStudies(bench, 'sizes.csv', withChance);
    await settled();
    const { elements: found } = await readSizedElements(bench);
    expect(found.map(({ driver, readings }) => [driver, readings.length])).toEqual([
      ['perimeter_m', 32],
      ['a_number', 32],
    ]);
  });
});

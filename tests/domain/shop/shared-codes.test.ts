import { describe, expect, it } from 'vitest';
import { foldShop } from '../../../src/domain/shop/fold-shop';
import { sharedCodes } from '../../../src/domain/shop/shared-codes';
import { recordAt } from '../../support/records';

const defined = (device: string, sequence: number, code: string) =>
  recordAt(sequence, sequence, 'shop', { kind: 'part-defined', code, name: '' }, { device });

describe('parts with one code', () => {
  it('are found in whatever spelling, and no more once one of them is retired', () => {
    const records = [defined('own', 1, 'A1'), defined('own', 2, 'B2'), defined('dx', 1, ' a1')];
    expect(
      sharedCodes(foldShop(records).parts)
        .map(({ id }) => id)
        .sort(),
    ).toEqual(['dx:1', 'own:1']);
    const retired = recordAt(3, 3, 'shop', { kind: 'part-retired', part: 'dx:1', retired: true });
    expect(sharedCodes(foldShop([...records, retired]).parts)).toEqual([]);
  });
});

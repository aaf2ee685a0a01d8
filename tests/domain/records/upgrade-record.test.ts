import { describe, expect, it } from 'vitest';
import { chainOf } from '../../../src/domain/records/chain';
import { ChainCheck } from '../../../src/domain/records/chain-check';
import type { LogRecord } from '../../../src/domain/records/log-record';
import { type FactUpgrade, RECORD_VERSION, upgradeRecord } from '../../../src/domain/records/upgrade-record';
import { recordAt } from '../../support/records';

/** Records of an older release, chained as it chained them. */
function older(count: number): LogRecord[] {
  let chain = 0;
  return Array.from({ length: count }, (_, place) => {
    const fact = { kind: 'person-added', code: `k${place}` } as const;
    const record = recordAt(place + 1, place * 1_000, 'shop', fact);
    chain = chainOf(record, chain);
    return { ...record, chain };
  });
}

/** A change of meaning that a later release might make: codes in capitals. Version 1 to version 2. */
const capitals: FactUpgrade = (fact) =>
  fact.kind === 'person-added' ? { ...fact, code: fact.code.toUpperCase() } : fact;
/** And one after it: codes with a prefix. Version 2 to version 3. */
const prefixed: FactUpgrade = (fact) =>
  fact.kind === 'person-added' ? { ...fact, code: `P-${fact.code}` } : fact;

describe('upgradeRecord', () => {
  it('leaves a record of this release as it is: the very same', () => {
    const [record] = older(1);
    expect(upgradeRecord(record!, RECORD_VERSION, 0)).toBe(record);
  });

  it('takes a record through every version after its own, in order', () => {
    const [record] = older(1);
    expect(upgradeRecord(record!, 1, 0, [capitals, prefixed]).fact).toMatchObject({ code: 'P-K0' });
    expect(upgradeRecord(record!, 2, 0, [capitals, prefixed]).fact).toMatchObject({ code: 'P-k0' });
    expect(upgradeRecord(record!, 3, 0, [capitals, prefixed])).toBe(record);
  });

  it('chains the upgraded records anew, the same each time', () => {
    const upgradeAll = () => {
      let before = 0;
      return older(5).map((record) => {
        const upgraded = upgradeRecord(record, 1, before, [capitals]);
        before = upgraded.chain;
        return upgraded;
      });
    };
    const check = new ChainCheck();
    for (const record of upgradeAll()) check.take(record);
    expect(check.breaks).toEqual([]);
    expect(upgradeAll()).toEqual(upgradeAll());
  });

  it('knows no version below 1 or above its own', () => {
    const [record] = older(1);
    for (const version of [0, RECORD_VERSION + 1, 1.5, Number.NaN]) {
      expect(() => upgradeRecord(record!, version, 0)).toThrow(
        new RangeError('upgradeRecord requires a version from 1 to its own'),
      );
    }
  });
});

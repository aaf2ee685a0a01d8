import { describe, expect, it } from 'vitest';
import { chainOf } from '../../../src/domain/records/chain';
import { ChainCheck } from '../../../src/domain/records/chain-check';
import type { LogRecord } from '../../../src/domain/records/log-record';
import { recordAt } from '../../support/records';

const done = { kind: 'part-done', part: 'p', partCode: 'M', targetMs: null } as const;

function chained(count: number, device = 't'): LogRecord[] {
  let chain = 0;
  return Array.from({ length: count }, (_, place) => {
    const record = recordAt(place + 1, place * 1_000, 't:1', done, { device });
    chain = chainOf(record, chain);
    return { ...record, chain };
  });
}

function breaksOf(records: LogRecord[]) {
  const check = new ChainCheck();
  for (const record of records) check.take(record);
  return check.breaks;
}

describe('the chain of checksums', () => {
  it('is whole in a log as it was written, of one device and of two', () => {
    expect(breaksOf([...chained(50, 'a'), ...chained(50, 'b')])).toEqual([]);
  });

  it('is whole after a round trip through JSON and through a structured clone', () => {
    expect(breaksOf(JSON.parse(JSON.stringify(chained(9))))).toEqual([]);
    expect(breaksOf(structuredClone(chained(9)))).toEqual([]);
  });

  it('breaks at a record that was changed by a millisecond', () => {
    const records = chained(10);
    const touched = records[4]!;
    records[4] = { ...touched, stamp: { ...touched.stamp, wallMs: touched.stamp.wallMs + 1 } };
    expect(breaksOf(records)).toEqual([{ device: 't', sequence: 5, why: 'changed' }]);
  });

  it('breaks at a record that is missing, and says which', () => {
    const records = chained(10);
    records.splice(6, 1);
    expect(breaksOf(records)).toEqual([{ device: 't', sequence: 7, why: 'missing' }]);
  });

  it('breaks at the first record when that was changed', () => {
    const [first, ...rest] = chained(3);
    expect(breaksOf([{ ...first!, stream: 'x' }, ...rest])).toEqual([
      { device: 't', sequence: 1, why: 'changed' },
    ]);
  });

  it('can be followed from the middle of a log', () => {
    expect(breaksOf(chained(10).slice(5))).toEqual([]);
  });
});

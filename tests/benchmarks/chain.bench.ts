import { bench, describe } from 'vitest';
import { ChainCheck, chainOf } from '../../src/domain/records/chain';
import type { LogRecord } from '../../src/domain/records/log-record';
import { recordAt } from '../support/records';

// What opening and the check on Records do: 300 ms for 10,000 records are asked for, on a tablet.

const done = { kind: 'part-done', part: 't:1', partCode: 'M', targetMs: 90_000 } as const;
let chain = 0;
const records = Array.from({ length: 10_000 }, (_, place): LogRecord => {
  const record = recordAt(place + 1, place * 1_000, 't:2', done);
  chain = chainOf(record, chain);
  return { ...record, chain };
});

describe('the chain of checksums', () => {
  bench('followed through 10,000 records', () => {
    const check = new ChainCheck();
    for (const record of records) check.take(record);
    if (check.breaks.length > 0) throw new Error('the chain is whole');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inOrder } from '../../../src/domain/records/in-order';
import { inStreamOrder } from '../../../src/domain/records/in-stream-order';
import type { LogRecord } from '../../../src/domain/records/log-record';
import { placeOnTimeline } from '../../../src/domain/records/place-on-timeline';
import { recordAt, stampAt } from '../../support/records';

const MINUTE_MS = 60_000;
const done = { kind: 'part-done', part: 'p', partCode: 'M', targetMs: null } as const;
const at = (device: string, sequence: number, minute: number, stream = 'shop'): LogRecord =>
  recordAt(sequence, minute * MINUTE_MS, stream, done, { device });
const names = (records: readonly LogRecord[]) =>
  records.map(({ device, sequence }) => `${device}${sequence}`);

describe('records of several tablets in order', () => {
  it('stand by wall clock, those of one moment by tablet and number', () => {
    const records = [at('b', 1, 3), at('a', 2, 5), at('a', 1, 3), at('b', 2, 4)];
    expect(names(inOrder(records))).toEqual(['a1', 'b1', 'b2', 'a2']);
  });

  it('keep the order of a tablet whose clock was set back, whatever another one adds in between', () => {
    // Its clock ran an hour ahead until the third record.
    const own = [at('z', 1, 0), at('z', 2, 61), at('z', 3, 12)];
    const others = [1, 2, 3, 4, 5].map((sequence) => at('b', sequence, 24 + sequence));
    expect(names(inOrder([...own, ...others]))).toEqual(['z1', 'b1', 'b2', 'b3', 'b4', 'b5', 'z2', 'z3']);
  });

  it('are in one order only, whatever order they come in, and each tablet’s in its own', () => {
    const anyRecord = fc
      .tuple(fc.constantFrom('a', 'b', 'z'), fc.integer({ min: 1, max: 30 }), fc.integer({ min: 0, max: 60 }))
      .map(([device, sequence, minute]) => at(device, sequence, minute));
    const anyLog = fc.uniqueArray(anyRecord, {
      maxLength: 40,
      selector: ({ device, sequence }) => `${device}${sequence}`,
    });
    fc.assert(
      fc.property(anyLog, fc.array(fc.nat()), (records, salt) => {
        const shuffled = records
          .map((record, place) => ({ record, by: salt[place] ?? place }))
          .sort((a, b) => a.by - b.by)
          .map(({ record }) => record);
        const ordered = inOrder(records);
        expect(inOrder(shuffled)).toEqual(ordered);
        for (const of of ['a', 'b', 'z']) {
          const own = ordered.filter(({ device }) => device === of).map(({ sequence }) => sequence);
          expect(own).toEqual([...own].sort((a, b) => a - b));
        }
      }),
      { numRuns: 1_000 },
    );
  });
});

describe('what another tablet adds to a turn', () => {
  const turn = [at('t', 1, 0, 't:1'), at('t', 2, 2, 't:1'), at('t', 3, 3, 't:1')];
  const placed = (added: LogRecord) =>
    placeOnTimeline(inStreamOrder('t:1', [...turn, added]))
      .filter(({ record }) => record.device === 't')
      .map(({ atMs }) => atMs / MINUTE_MS);

  it('takes no time, wherever the clocks of that tablet stand', () => {
    for (const minute of [-1_440, -1, 0, 1, 2.5, 10, 100_000]) {
      expect(placed(at('b', 7, minute, 't:1'))).toEqual([0, 2, 3]);
      const sameRunName = at('b', 7, minute, 't:1');
      expect(placed({ ...sameRunName, stamp: stampAt(minute * MINUTE_MS, { run: 'elsewhere' }) })).toEqual([
        0, 2, 3,
      ]);
    }
  });

  it('takes none out of a sleep either', () => {
    const slept = {
      ...at('t', 4, 5, 't:1'),
      fact: { kind: 'slept', sleptMs: MINUTE_MS } as const,
      stamp: stampAt(4 * MINUTE_MS, { wallMs: stampAt(5 * MINUTE_MS).wallMs }),
    };
    const line = placeOnTimeline(inStreamOrder('t:1', [...turn, slept, at('b', 7, 4.2, 't:1')]));
    expect(line.at(-1)!.atMs).toBe(5 * MINUTE_MS);
  });
});

describe('a tap that waited while a heartbeat was recorded', () => {
  it('does not make the time between them count twice', () => {
    const beat = { kind: 'clock-set', byMs: 0 } as const;
    const records = [at('t', 1, 0), { ...at('t', 2, 2), fact: beat }, at('t', 3, 1.5), at('t', 4, 4)];
    expect(placeOnTimeline(records).at(-1)!.atMs).toBe(4 * MINUTE_MS);
  });
});

import { describe, expect, it } from 'vitest';
import type { LatchFact } from '../../../src/domain/records/shop-fact';
import { foldLatch } from '../../../src/domain/shop/fold-latch';
import { latchWaitMs } from '../../../src/domain/shop/latch-wait';
import { recordAt, stampAt } from '../../support/records';

const set: LatchFact = { kind: 'pin-set', salt: '00', iterations: 1, hash: 'ab' };
const refused: LatchFact = { kind: 'pin-refused' };

/** The latch after these facts, one a second. */
function latchAfter(...facts: (LatchFact | [LatchFact, string])[]) {
  const records = facts.map((fact, place) => {
    const [own, device] = Array.isArray(fact) ? fact : [fact, 't'];
    return recordAt(place + 1, place * 1_000, 'shop', own, { device });
  });
  return foldLatch(records, 't');
}

describe('foldLatch', () => {
  it('is open until a PIN is set, and again once it is taken away', () => {
    expect(latchAfter().pin).toBeNull();
    expect(latchAfter(set).pin).toEqual(set);
    expect(latchAfter(set, { kind: 'pin-removed' }).pin).toBeNull();
  });

  it('counts wrong PINs of this tablet since the last right one', () => {
    expect(latchAfter(set, refused, refused).refusals).toBe(2);
    expect(latchAfter(set, refused, { kind: 'pin-accepted' }, refused).refusals).toBe(1);
    expect(latchAfter(set, [refused, 'other'], [refused, 'other']).refusals).toBe(0);
    expect(latchAfter(set, refused, set).refusals).toBe(0);
  });
});

describe('latchWaitMs', () => {
  const wrong = (count: number) => latchAfter(set, ...Array.from({ length: count }, () => refused));
  const waitAfter = (count: number, laterMs: number) =>
    latchWaitMs(wrong(count), stampAt(count * 1_000 + laterMs));

  it('forgives two slips, waits 30 s after the third, and doubles that up to 15 minutes', () => {
    expect([0, 1, 2].map((count) => waitAfter(count, 0))).toEqual([0, 0, 0]);
    const waits = [3, 4, 5, 6, 7, 8, 9, 100].map((count) => waitAfter(count, 0) / 1_000);
    expect(waits).toEqual([30, 60, 120, 240, 480, 900, 900, 900]);
  });

  it('ends when its time has passed', () => {
    expect(waitAfter(3, 29_999)).toBe(1);
    expect(waitAfter(3, 30_000)).toBe(0);
  });

  it('goes on by the wall clock after a reload', () => {
    const later = stampAt(3_000 + 10_000, { run: 'run-2', monoMs: 50 });
    expect(latchWaitMs(wrong(3), later)).toBe(20_000);
  });

  it('keeps nobody out for a year because a clock was set back', () => {
    const earlier = stampAt(-365 * 86_400_000, { run: 'run-2', monoMs: 50 });
    expect(latchWaitMs(wrong(9), earlier)).toBe(0);
  });
});

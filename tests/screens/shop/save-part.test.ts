import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { retirePart } from '../../../src/application/shop/retire-part';
import { setTarget } from '../../../src/application/shop/set-target';
import { readTargetTime } from '../../../src/domain/shop/read-target-time';
import { newReasonId } from '../../../src/screens/shop/new-reason-id';
import { savePart } from '../../../src/screens/shop/save-part';
import { targetAsTyped } from '../../../src/screens/shop/target-as-typed';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';

let bench: Bench;
beforeEach(async () => {
  bench = await Bench.open(new InMemoryRecordLog('t'), new FakeClock());
});
const parts = () => bench.shop.value.parts;

describe('savePart', () => {
  it('takes a new part with its target', () => {
    expect(savePart(bench, null, { code: ' M ', name: ' Door ', target: '1,8' })).toBe('');
    expect(parts()).toMatchObject([{ code: 'M', name: 'Door', targetMs: 108_000, targetSource: 'typed' }]);
  });

  it('takes a part without a target, and takes a target away', () => {
    savePart(bench, null, { code: 'M', name: '', target: '' });
    expect(parts()[0]!.targetMs).toBeNull();
    savePart(bench, parts()[0]!, { code: 'M', name: '', target: '2' });
    savePart(bench, parts()[0]!, { code: 'M', name: '', target: ' ' });
    expect(parts()[0]!.targetMs).toBeNull();
  });

  it.each([
    ['0', 'A target is at least one second. Nothing was changed.'],
    ['0:00', 'A target is at least one second. Nothing was changed.'],
    ['99999', 'A target is at most one day. Nothing was changed.'],
    [
      '1:75',
      'A minute has 60 seconds, and an hour 60 minutes: the last figure is above 59. Nothing was changed.',
    ],
    ['-1', 'That is no time: write 1:48, 1.8 or 1,8. Nothing was changed.'],
  ])('says one sentence about a target of %s and takes nothing, the code neither', (target, sentence) => {
    expect(savePart(bench, null, { code: 'M', name: '', target })).toBe(sentence);
    expect(parts()).toEqual([]);
    savePart(bench, null, { code: 'M', name: '', target: '2' });
    const before = bench.changes.value;
    expect(savePart(bench, parts()[0]!, { code: 'V', name: 'Other', target })).toBe(sentence);
    expect(bench.changes.value).toBe(before);
  });

  it('wants a code, and one that no other part in use has', () => {
    savePart(bench, null, { code: 'M', name: '', target: '' });
    expect(savePart(bench, null, { code: ' ', name: '', target: '' })).toBe(
      'A part needs a code. Nothing was changed.',
    );
    const taken = 'Another part in use has the code M. Nothing was changed.';
    expect(savePart(bench, null, { code: 'M', name: '', target: '' })).toBe(taken);
    retirePart(bench, parts()[0]!.id, true);
    expect(savePart(bench, null, { code: 'M', name: '', target: '' })).toBe('');
  });

  it('records nothing when nothing changed, so that a standard time stays one', () => {
    savePart(bench, null, { code: 'M', name: '', target: '' });
    setTarget(bench, parts()[0]!.id, 90_804, { source: 'standard', study: 't:9' });
    const before = bench.changes.value;
    const typed = { code: 'M', name: '', target: targetAsTyped(90_804) };
    savePart(bench, parts()[0]!, typed);
    expect(bench.changes.value).toBe(before);
    savePart(bench, parts()[0]!, { ...typed, name: 'Door' });
    expect(parts()[0]).toMatchObject({ name: 'Door', targetSource: 'standard', targetStudy: 't:9' });
  });
});

describe('targetAsTyped', () => {
  it('writes whole seconds as minutes and seconds, and others as decimal minutes', () => {
    expect(targetAsTyped(108_000)).toBe('1:48');
    // 90.804 s ÷ 60 = 1.5134 min.
    expect(targetAsTyped(90_804)).toBe('1.5134');
    expect(targetAsTyped(null)).toBe('');
  });

  it('comes back to the same millisecond for every target that a part can have', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1_000, max: 86_400_000 }), (targetMs) => {
        expect(readTargetTime(targetAsTyped(targetMs))).toEqual({ ok: true, targetMs });
      }),
      { seed: 48, numRuns: 2_000 },
    );
  });
});

describe('newReasonId', () => {
  it('is unlike any in use, and unlike one that was left out before', () => {
    const first = newReasonId([], 1_000);
    expect(newReasonId([], 1_001)).not.toBe(first);
    // Two in one millisecond: 1000 is rs in base 36, 1001 rt.
    expect(first).toBe('own-rs');
    expect(newReasonId([{ id: first }], 1_000)).toBe('own-rt');
  });
});
